import { z } from 'zod';

// Before any schema is made: the window's policy forbids building code from text.
z.config({ jitless: true });
