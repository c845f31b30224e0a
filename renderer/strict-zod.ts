import { z } from 'zod';

// Before any schema is made: the window's policy forbids building code from text. Bundled together with
// zod itself, which every schema imports, it runs before all of them.
z.config({ jitless: true });
