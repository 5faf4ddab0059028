import { serve } from '../threads/serve.ts';
import { drawerWith } from './draw.ts';
import { fontFiles } from './fonts.ts';

// The thread that draws pictures, so that the chat goes on meanwhile.

serve<string>(() => drawerWith(fontFiles()));
