/** Pictures of pixels as they come: PNG, JPEG, TIFF and their like, at the size that they say they have. */
package org.frisket.imports.picture;
