import { createSignal } from 'solid-js';

/** Screens live behind the hash, so the app runs from any sub-path and from a file server. */
export type Route =
  | {
      readonly screen:
        | 'start'
        | 'shoot'
        | 'measuring'
        | 'readings'
        | 'used'
        | 'card'
        | 'drawer'
        | 'about';
    }
  | { readonly screen: 'standards'; readonly query: string }
  | { readonly screen: 'sheet' | 'result' | 'counter' | 'wear'; readonly id: string };

function parseHash(hash: string): Route {
  const [name, argument] = hash.replace(/^#\/?/, '').split('/', 2);
  switch (name) {
    case 'shoot':
    case 'measuring':
    case 'readings':
    case 'used':
    case 'card':
    case 'drawer':
    case 'about':
      return { screen: name };
    case 'standards':
      return { screen: 'standards', query: decode(argument ?? '') };
    case 'sheet':
    case 'result':
    case 'counter':
    case 'wear':
      return argument ? { screen: name, id: decode(argument) } : { screen: 'start' };
    default:
      return { screen: 'start' };
  }
}

export function hashOf(route: Route): string {
  if ('id' in route) return `#/${route.screen}/${encodeURIComponent(route.id)}`;
  if (route.screen === 'standards' && route.query)
    return `#/standards/${encodeURIComponent(route.query)}`;
  return route.screen === 'start' ? '#/' : `#/${route.screen}`;
}

/** A hand-typed hash may hold a stray '%'; it is then taken as it stands. */
function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

const [current, setCurrent] = createSignal<Route>(parseHash(location.hash));
addEventListener('hashchange', () => setCurrent(parseHash(location.hash)));

export const route = current;

export function go(to: Route, how: 'push' | 'replace' = 'push'): void {
  const hash = hashOf(to);
  if (how === 'push') location.hash = hash;
  else {
    history.replaceState(null, '', hash);
    setCurrent(parseHash(hash));
  }
}
