import './offline/without-eval';
import { render } from 'solid-js/web';
import { App } from './ui/shell/App';

render(() => <App />, document.getElementById('app')!);
