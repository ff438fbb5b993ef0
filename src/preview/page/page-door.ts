/** How a sidebar page reaches the script: set on the preview's window, called by the frame. JSON text both ways. */
export type PageDoor = {
  functionNames(): string[];
  /** Runs the function; throws what the script threw. */
  call(functionName: string, valuesJson: string): string;
  close(frame: Window): void;
  focusGrid(): void;
};

export const DOOR_KEY = 'sounderPageDoor';
