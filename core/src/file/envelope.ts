/** What a file must say before anything else of it is read. The shell knows this much of a shop file and no more. */
export const FORMAT = 'ratiowright shop file';
export const VERSION = 1;
export const EXTENSION = '.ratiowright';
/** A shop with a thousand sheets stays under a tenth of this; anything larger was not written by us. */
export const LARGEST_FILE_BYTES = 32 * 1024 * 1024;
