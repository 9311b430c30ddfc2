import { fromBase64 } from './bytes-text.ts'
import { inflated } from './deflate.ts'

/**
 * What every plan's document has in common (names of fields, usual answers), so that a hand-over carries only what is its own. Made once from an example plan;
 * it belongs to version 1 of the hand-over and can never change. A better one is a second one, with version 2.
 */
const DEFLATED = [
  'xVlbiBxZGa7urume6Z7JbUYxGNZ+M156mMxIFrx1shmSgc3EyERWZV+qu053V7qqTluXqXR6axhZhRHEXVAkxkWC+pDAsgTdh6iLiL4ouC8K7oNPiw+C',
  'irAsC+vig99/TnV3Vc30XALWds+l/q/O+W/n//9z6i9FKf3m+Te+/pF3819+uZArn/k//Cj+Wf+jytnZjH9/eO7tT/RMzW5xx9I8utpkjmtwmy4Nnf7a',
  'msXoP7ulWT1TXLodHiyazG57nRFpaa5LRNN3HGY3++Ja85qdReIdoxzmdp5uX2fOqhYb1GNadzdqMs3ejbYMx7Db7q7BXNOBJwExe315D/CGE5+sQy0X',
  's6/yyAyBWtxwPd9hl0npPWDD1kwBdzSrAcctNrlvCzeOEdjgbBg6Wyc40EzTXfRtQwySlCv8KqRKADNaY6rBbbEOkrrJDSlAklqDb8Y5N5jJgxgNfbCc',
  '0ikSaRmmUDm673tkcWyGadgYHwOwmjpcSADvMbrpLgaG7nWSUIcZ7Y6XxjSh+ghowBdD7m0HvtIXXW4IfSKyxbkX6RshPYffZE0PMRmf5nWMZtfGmiV4',
  'mZB0selEaxhHn9Ka3YQYivcoziMs0DxEhdYwpUOHI03O9TjgaEZ8Vkdz9CZ3EnNgtxP5J0I0WJHQX8eiX6LFEQk1NFWz11didENzHCyngDyEq4s0cS7J',
  'yBpjbk9DeI5pKGjeSLhnjK+yXqRYNJd5DXgmhnQ0W488IIG21otRMNWOC29onsfsmHQLmXI1MYWQZ4zIQ2PouoFUSnBG6RmTXea0Yne7jEmelnGL0WC7',
  '6TBPOE8iFnc8TcwPNNdjIseinCIyPkEi6QnjxCDKM4ZOjkZHBQC/TYb4t3XUnlUmAnWMXaMcSKAtrRmFc0QjDpIjdNZEzolgTOAd7rvSZ5L2OlR7YkCD',
  'YkRz+jGo5TNzwxtGYzTPYUyGQYxvQpLbYSZCfxewhvR1OLdik6M7X8BSIVBkIstyDA/z7hpFdAzTnX4aomGQfik5KoVohrMbWfMtQzc8UbQjNKDcjIox',
  'wQ3fMJHwWFcv2hokgs2JyyCVtIm6iSlSMQk1EQvMhm0xDK5yYtuMBJFr3jOMdXWEZQxFVdhALYipYXKXtBCDHN+WO991x2iydcPmwt0EuxbvMn03Trbt',
  'RrnXQQkA5wQq3UHCoO1XUH2GN7qGaV81WoywkSKUUQnQ4jbrLzZ8vc3GfCWIvKF6PNzRpWUeisvYLLkbD0m/R6kqqn6rBW86DCVD/7QkEDImq51vdriL',
  'HcFjFrY6FzuQhxrtXcNBA/82jNvkxCbrjYx3GUoMM01wEH9pJIzAiiKHxQjPMXrERm5MCZkoorVzy5mLzNhIkze7mUoc5Uu2UpkFoTW5C70fki3N6TLU',
  '4ewluxaOY9kKNrV+Deucsbl0Dqg1OJ2rspeLDS7j5aWTIAKajoKZyh0eXLNf4eHum61Q8VxTa4BbtoVSnD2ylYhzRo3GZxtQQqzDMy5SNp5q3Ewl0nNU',
  'bSXb/V3I/NTyk9kK5bxVex/8S2J7OOJmL9XRWlmfaITc7HcdHMX17Cu/kOo5fsYlGA+E1GHLWCaenzLxsGjB4iw+bH5aTHQeRRcST2+O0fCpuSCAntbn',
  'vueqRbWk5ldzJbWizqjTalmdV0/hO6/OqSfF9Ty+x/BbBlLGt6LO4nsMV8eAzKnH1RNibAX0Kfw/BfoE/s4BOSHGnMR4GjWrLkRIGddzuCK0Ir7HgMi/',
  'dK8sOJCUBTFSzqaZH8T3BOjjoEge6Sa5k2RC5zGHLPgAEPkl/mW1OFcqqjNXlClclo9NF+cuKwlyKnk3Rc4kyHVlP3Judr+5c5UjkGnO0/sKSulc3leN',
  '1OCUc1KC9meVMmH/wam7KbnJuwjIEha95Oc2ldmckvFv/uKHCxffKuReVJXgOPVPAoe6ejVKnzAXLETvQWpewGvDLn9weo2hsVe9Tt35T1Zxqzq8dSvI',
  'W1aQ77Y382qT6ywoXFnbKOpGG+3JMB9UxGNdLehwk4Wv5sNfFrYgpNhDU5bpYSk8FSrP1S8oyqD+ix/Q526YH9T//uzZd377wrOb04Uu6wcnxJm2tryy',
  'VDt3bqn25PliS7MMsx9U0JphujzyluTrmvVB/fXeT94of+5rRVk8BvXXBK+PlaIG/qD+c++1m1v/+evsJjf0y44mWu+hMtVEMXJ9paKjOqEL93R7fSXc',
  'OeMrwQwVOiEkKEGIabidzYJqGTZ4bTfW//TWg/8WfdfXTNDfuP3mlVcWBqql3QL1nUdf/Oc3n3g0qP9tRXwG9T9II7cC1QbXQd2T40MlhAf+0hKf0UVQ',
  'xKHeY+ag/js5P5gRj6ww2wqmXKqSI7eN/QdWwZTJNpm5tRWUfLtr8wD20bc/qH9PChzUX5G6hdMkOY0O6j8aXvx6eBGZFqgot16Yi03aePDxpS8ta4P6',
  't6QK0I32+0G9811y9XuD+p+l/ptqUT7shzmVtsowDyvgh1CdQY/0MpaCO4P6u7R+vZ/GB5PZoSLnTMXHvgMNbr+5Nqg/SLlh5OqEY+CRGbiU16iZvUU0',
  'faLFuJAbzvjXH+nzepgPy+HdXPjZ8IkoRofLF+ZwLxdO+zni6gs+4U4Bw/PhvX9bI3U2FfntB1OiNUihLwM1LAaVWE6Fj+7ng/Ly0vL52tJKbWk5mKbH',
  '1wD91uD4JdEMqg6BaCmDArpwMX6zSX4PX8hN4De/Llo8Vbx5OYhnSseda0dUcYbesNXoTUW4EEz1DNYkDyR4vpo0uyIafehC4fVI8KGniKj2wbXa6FfR',
  'Ga4iDdHEDbfD8Pt5IWHUpgPjAlrWaf4vvpT0Q1E+nAdCQ+IwCjIyvh1Chfj0ez+e5MZJNu/P7+W7R1qWR4vhwh5MTyeZ3v/qEXWU+ZQLVHpZ/NzntxUl',
  'FYyLCYZlcawVmRrM47VWVbyVFeuBd06sO2RbibW2xlE0uDAr0ykp485nkusiX0gFlRvifxUVRJdVMap9I/aitoB9VGQuFFCdUKJS3P+RWvaJ7N+W08E+',
  '1qgi9qLBkA6nOzNHdLUYQW2okbvrStrdd6zHcvf0sM80IfRT6bor8mfjLSOyeM8E3Sk8ToJGIqZEc2iCfvd+dUBqqtRxmbgU2/DUoZdiVNPHXFVq5aRT',
  '6eHvS0csmzHOU6KXANY4De2xzA9PHTVNqStyYCLdP3uoSN+T4UlsnthBkwxfWjo0w/K4hTLR7J0zR901Rg2SA21/uHpoVSuxBsiBfFMF8GAXJIvSrk3o',
  '+aPuIvKoM7lk3P92kuNha0aCb1hIJeTP1MdiWor6DxNDYPv0Ec2PjoWT7d9+73HsHx7HlP8B',
].join('')

let bytes: Uint8Array | undefined

export function dictionary(): Uint8Array {
  if (bytes !== undefined) return bytes
  const packed = fromBase64(DEFLATED)
  bytes = (packed && inflated(packed, 100_000)) ?? undefined
  if (bytes === undefined) throw new Error('the dictionary is not readable')
  return bytes
}
