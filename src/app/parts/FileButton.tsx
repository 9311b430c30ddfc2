import { useRef } from 'react'
import { Button } from './Button.tsx'
import type { IconName } from './Icon.tsx'

/** A button that lets one choose files of a kind. The same file may be chosen again, once what was done with it is over. */
export function FileButton({
  icon,
  label,
  accept,
  shape,
  multiple = false,
  onFiles,
}: {
  readonly icon: IconName
  readonly label: string
  readonly accept: string
  readonly shape?: 'over'
  readonly multiple?: boolean
  readonly onFiles: (files: readonly File[]) => Promise<void>
}) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <Button icon={icon} onPress={() => input.current?.click()} {...(shape !== undefined && { shape })}>
        {label}
      </Button>
      <input
        ref={input}
        type="file"
        className="hide"
        accept={accept}
        multiple={multiple}
        tabIndex={-1}
        aria-label={label}
        onChange={(event) => {
          const chosen = event.currentTarget
          void onFiles([...(chosen.files ?? [])]).then(() => {
            chosen.value = ''
          })
        }}
      />
    </>
  )
}
