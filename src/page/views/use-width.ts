import { useEffect, useRef, useState } from 'preact/hooks';

/** The width of an element in CSS pixels, as it changes; 0 until it is known. */
export function useWidth<Kind extends Element>() {
  const ref = useRef<Kind>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    setWidth(element.clientWidth);
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { ref, width };
}
