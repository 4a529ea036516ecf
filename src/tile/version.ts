/** Version of this library; recipes carry it, since the same bytes are promised for the same version. */
export const VERSION = "0.1.0";
