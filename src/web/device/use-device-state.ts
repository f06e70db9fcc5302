import { useEffect, useState } from 'preact/hooks';
import type { Device, DeviceState } from './device.ts';

/** What a device shows now, and each time anew when that changes. */
export function useDeviceState<P>(device: Device<P>): DeviceState<P> {
  const [state, setState] = useState(device.state());
  useEffect(() => {
    setState(device.state());
    return device.onChange(() => setState(device.state()));
  }, [device]);
  return state;
}
