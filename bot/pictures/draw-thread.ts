import { collector } from '../threads/collect.ts';
import { serve } from '../threads/serve.ts';
import { drawerWith } from './draw.ts';
import { fontFiles } from './fonts.ts';

// The thread that draws pictures, so that the chat goes on meanwhile. Every drawing holds its pixels and the fonts, some
// megabytes outside the heap, until it is collected: a hundred of them once held 150 MB.

serve<string>(() => drawerWith(fontFiles()), collector());
