import { openBuiltDoor } from '../../dist/browser-door.mjs';

/** The door as built, for the files that it is begun with. Sends where to go, and ends with whoever began it. */
const door = await openBuiltDoor(process.argv.slice(2));
process.once('disconnect', door.close);
process.send?.(door.startUrl());
