export { default } from '../not-found';

export const metadata = { title: 'Nothing here · Gambrel', robots: { index: false } };
