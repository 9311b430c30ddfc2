/** The kiln of the app's icon, in ink. */
export function Mark() {
  return (
    <svg className="mark" viewBox="0 0 40 32" aria-hidden="true" focusable="false">
      <path className="k-outline" d="M2 30V8h36v22M0 30h40" />
      <path className="k-thin" d="M2 15h36M2 22h10M28 22h10M12 8v7M28 8v7M20 8v7M7 15v7M33 15v7M12 22v8M28 22v8" />
      <path className="k-edge" d="M5 3.5h30M8 6h24" />
      <path className="k-hollow" d="M12 30V17h16v13z" />
      <path
        className="k-flame"
        d="M20 29c-3.2 0-4.3-2.5-4-4.7.4-1.8 1.5-2.5 1.8-4.3.7 1.1 1.1 1.8 1.1 2.9.7-1.8.7-4.3 2.2-6.1 0 2.5 1.8 4 2.5 6.5.7 2.5-.4 5.7-3.6 5.700z"
      />
    </svg>
  )
}
