package org.frisket.print.picture;

import java.io.IOException;

import javax.imageio.stream.ImageInputStream;

/** Opens a file anew. */
@FunctionalInterface
interface PictureSource {

	ImageInputStream open() throws IOException;
}
