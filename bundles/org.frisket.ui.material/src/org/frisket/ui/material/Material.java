package org.frisket.ui.material;

/** What others may open of the screen for stock and settings. */
public final class Material {

	public static final String SHELF_ID = "org.frisket.ui.material.shelf"; //$NON-NLS-1$

	private Material() {
	}
}
