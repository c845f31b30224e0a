import { z } from 'zod';

// Before any schema is made: code made from text pays in the long run, and this run is over in a moment.
z.config({ jitless: true });
