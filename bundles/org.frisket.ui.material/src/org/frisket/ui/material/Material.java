package org.frisket.ui.material;

/** What others may open of the screen for stock and settings. */
public final class Material {

	public static final String SHELF_ID = "org.frisket.ui.material.shelf"; //$NON-NLS-1$

	/** The editor that shows the page of a test sheet. */
	public static final String TEST_SHEET_ID = "org.frisket.ui.material.testSheet"; //$NON-NLS-1$

	/** The editor that shows machines and tools. */
	public static final String MACHINES_ID = "org.frisket.ui.material.machines"; //$NON-NLS-1$

	private Material() {
	}
}
