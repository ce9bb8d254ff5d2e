import {
  createEffect,
  createSignal,
  ErrorBoundary,
  lazy,
  Match,
  on,
  onMount,
  Show,
  Suspense,
  Switch,
} from 'solid-js';
import { keepOffline } from '../../offline/keep-offline';
import { initialLanguage, language, setLanguage, t } from '../language/language';
import { StartScreen } from '../start/StartScreen';
import { acceptDropsAndPastes } from '../work/intake';
import { followOtherTabs } from '../work/sheets';
import './base.css';
import { Notices } from './Notices';
import { notify } from './notices';
import { type Route, route } from './route';
import { ShellFrame } from './ShellFrame';

const MeasuringScreen = lazy(async () => ({
  default: (await import('../measuring/MeasuringScreen')).MeasuringScreen,
}));
const ShootScreen = lazy(async () => ({
  default: (await import('../shoot/ShootScreen')).ShootScreen,
}));
const ReadingsScreen = lazy(async () => ({
  default: (await import('../readings/ReadingsScreen')).ReadingsScreen,
}));
const UsedScreen = lazy(async () => ({ default: (await import('../wear/UsedScreen')).UsedScreen }));
const WearScreen = lazy(async () => ({ default: (await import('../wear/WearScreen')).WearScreen }));
const CardScreen = lazy(async () => ({ default: (await import('../card/CardScreen')).CardScreen }));
const SheetScreen = lazy(async () => ({
  default: (await import('../sheet/SheetScreen')).SheetScreen,
}));
const CounterScreen = lazy(async () => ({
  default: (await import('../counter/CounterScreen')).CounterScreen,
}));
const ResultScreen = lazy(async () => ({
  default: (await import('../result/ResultScreen')).ResultScreen,
}));
const DrawerScreen = lazy(async () => ({
  default: (await import('../drawer/DrawerScreen')).DrawerScreen,
}));
const StandardsScreen = lazy(async () => ({
  default: (await import('../standards/StandardsScreen')).StandardsScreen,
}));
const AboutScreen = lazy(async () => ({
  default: (await import('../about/AboutScreen')).AboutScreen,
}));

export function App() {
  const [ready, setReady] = createSignal(false);
  onMount(async () => {
    acceptDropsAndPastes();
    followOtherTabs();
    keepOffline((takeOver) => notify(t().shell.update, { label: t().shell.reload, run: takeOver }));
    await setLanguage(initialLanguage(), false).catch(() => undefined);
    setReady(true);
  });
  // A new screen begins at its heading, for eyes and for screen readers alike.
  createEffect(
    on(
      () => JSON.stringify(route()),
      () => {
        scrollTo(0, 0);
        document.querySelector<HTMLElement>('main')?.focus({ preventScroll: true });
      },
      { defer: true },
    ),
  );
  createEffect(() => {
    document.title = titleOf(route());
    document.documentElement.lang = language();
  });

  return (
    <Show when={ready()}>
      <ShellFrame>
        <ErrorBoundary fallback={(cause) => <Broken cause={cause} />}>
          <Suspense fallback={<div class="screen-wait" />}>
            <Switch fallback={<StartScreen />}>
              <Match when={route().screen === 'measuring'}>
                <MeasuringScreen />
              </Match>
              <Match when={route().screen === 'shoot'}>
                <ShootScreen />
              </Match>
              <Match when={route().screen === 'readings'}>
                <ReadingsScreen />
              </Match>
              <Match when={route().screen === 'used'}>
                <UsedScreen />
              </Match>
              <Match when={route().screen === 'card'}>
                <CardScreen />
              </Match>
              <Match when={sheetId('sheet')} keyed>
                {(id) => <SheetScreen id={id} />}
              </Match>
              <Match when={sheetId('result')} keyed>
                {(id) => <ResultScreen id={id} />}
              </Match>
              <Match when={sheetId('counter')} keyed>
                {(id) => <CounterScreen id={id} />}
              </Match>
              <Match when={sheetId('wear')} keyed>
                {(id) => <WearScreen id={id} />}
              </Match>
              <Match when={route().screen === 'drawer'}>
                <DrawerScreen />
              </Match>
              <Match when={route().screen === 'standards'}>
                <StandardsScreen />
              </Match>
              <Match when={route().screen === 'about'}>
                <AboutScreen />
              </Match>
            </Switch>
          </Suspense>
        </ErrorBoundary>
      </ShellFrame>
      <Notices />
    </Show>
  );
}

function sheetId(screen: 'sheet' | 'result' | 'counter' | 'wear'): string | null {
  const now = route();
  return now.screen === screen && 'id' in now ? now.id : null;
}

function titleOf(now: Route): string {
  const names: Record<Route['screen'], string> = {
    start: t().start.title,
    shoot: t().shoot.title,
    measuring: t().measuring.title,
    readings: t().readingsOnly.title,
    card: t().card.title,
    drawer: t().drawer.title,
    standards: t().standards.title,
    about: t().about.title,
    sheet: t().sheet.title,
    result: t().result.title,
    counter: t().loop.counterTitle,
    used: t().wear.start,
    wear: t().wear.title,
  };
  return `${names[now.screen]} · Crestwise`;
}

function Broken(props: { readonly cause: unknown }) {
  console.error(props.cause);
  return (
    <div class="alert" role="alert">
      {t().shell.error}
    </div>
  );
}
