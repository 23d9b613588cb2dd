package org.frisket.ui.orders.internal.book;

import org.eclipse.jface.resource.ImageDescriptor;

/** Drawings of the order book. */
enum BookImages {

	/** In the place of a picture that is not there yet. */
	SHEET("foldedSheet"); //$NON-NLS-1$

	private final String file;

	BookImages(String file) {
		this.file = file;
	}

	ImageDescriptor descriptor() {
		return ImageDescriptor.createFromURL(BookImages.class.getResource("/icons/" + file + ".svg")); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
