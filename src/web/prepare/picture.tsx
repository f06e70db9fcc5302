import { useLayoutEffect, useRef } from 'preact/hooks';

/**
 * A drawing or a strip of our own engine, which escapes every text of a file in it. Only what differs
 * from the one before is put in its place: most marks and numbers of a strip stay where they are.
 */
export function Picture({ svg }: { readonly svg: string }) {
  const place = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const template = document.createElement('template');
    template.innerHTML = svg;
    if (place.current !== null) follow(place.current, template.content);
  }, [svg]);
  return <div class="picture" ref={place} />;
}

/** Makes the children of one node those of another. */
function follow(old: ParentNode & Node, fresh: ParentNode & Node): void {
  if (old.childNodes.length !== fresh.childNodes.length) {
    old.replaceChildren(...fresh.childNodes);
    return;
  }
  const next = [...fresh.childNodes];
  [...old.childNodes].forEach((node, n) => {
    const other = next[n];
    if (other === undefined || node.isEqualNode(other)) return;
    if (node instanceof Element && other instanceof Element && node.nodeName === other.nodeName) {
      for (const name of node.getAttributeNames()) if (!other.hasAttribute(name)) node.removeAttribute(name);
      for (const { name, value } of other.attributes)
        if (node.getAttribute(name) !== value) node.setAttribute(name, value);
      follow(node, other);
    } else node.replaceWith(other);
  });
}
