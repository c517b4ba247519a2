import { HostFault } from "../shared/ports/host-fault.ts";

/** What would do where a part of the program cannot be had. */
export const REACH = "See that this machine reaches the address the add-in is served from, then try again.";

/** A part of the program that is loaded when it is asked for; a HostFault in words where it cannot be. */
export async function part<T>(loading: Promise<T>): Promise<T> {
  try {
    return await loading;
  } catch (cause) {
    throw notLoaded(cause);
  }
}

export function notLoaded(cause: unknown): HostFault {
  return new HostFault("A part of Dutybook could not be loaded.", REACH, { cause });
}
