// What the service worker uses of MicroPython's loader, which ships no types of its own.
// Only strings should cross: numbers are cut to 32 bits on the way, and other objects leak.

export interface MicroPython {
  FS: {
    mkdir(path: string): void;
    writeFile(path: string, contents: Uint8Array | string): void;
  };
  globals: {
    // The caller knows what the Python name holds and says so.
    get(name: string): any;
  };
  runPython(source: string): unknown;
}

export function loadMicroPython(options: {
  url: string;
  heapsize?: number;
  pystack?: number;
  linebuffer?: boolean;
  stdout?: (line: string) => void;
  stderr?: (line: string) => void;
}): Promise<MicroPython>;
