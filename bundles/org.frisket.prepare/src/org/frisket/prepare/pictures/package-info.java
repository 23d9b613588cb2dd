/** Pictures of pixels: whether they can be read, how large they are, and their pixels. */
package org.frisket.prepare.pictures;
