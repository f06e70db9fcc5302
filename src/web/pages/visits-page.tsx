import { render } from 'preact';
import { VisitsScreen } from '../visits/visits-screen.tsx';
import { pageElement, pageLanguage } from './page-element.ts';

/** All visits of this server: which one do I go on with, and what came of the others? */
render(<VisitsScreen language={pageLanguage()} />, pageElement());
