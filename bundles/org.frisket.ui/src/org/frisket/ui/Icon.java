package org.frisket.ui;

import java.util.Locale;

import org.eclipse.jface.resource.ImageDescriptor;

/** Our own icons. They are drawings, and so are sharp at every zoom of the screen. */
public enum Icon {

	JOB, OPEN, UNDO, REDO, SAVE, SAVE_AS, SAVE_ALL, DELETE, ZOOM_IN, ZOOM_OUT, ZOOM_FIT, ZOOM_SELECTION, ZOOM_TRUE, DAMAGED,
	NEW, EXPORT, PRINT, MAKEREADY, REPAIRS, STACK, PROPERTIES, TYPE_CASE, SHELF, CATALOGUE, SCALE, HELP, BLOCKING, CAUTION, NOTE;

	/** A descriptor that the resource managers of JFace turn into an image when it is needed. */
	public ImageDescriptor descriptor() {
		return ImageDescriptor.createFromURL(Icon.class.getResource("/icons/" + fileName())); //$NON-NLS-1$
	}

	private String fileName() {
		StringBuilder name = new StringBuilder();
		for (String word : name().toLowerCase(Locale.ROOT).split("_")) { //$NON-NLS-1$
			name.append(name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
		}
		return name.append(".svg").toString(); //$NON-NLS-1$
	}
}
