package org.frisket.ui.material.internal.machines;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Control;
import org.frisket.material.trials.Verdict;

/** Icons of the pages for test sheets and machines; drawings, sharp at every zoom. */
public enum RoomIcon {

	MACHINES("machines"), MACHINE("machine"), TOOL("blade"), RULES("rules"), TEST_SHEET("testSheet"), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$
	THROUGH("verdictThrough"), NOT_THROUGH("verdictNotThrough"), TORN("verdictTorn"), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	CARRIER_CUT("verdictCarrierCut"), CORNERS_LIFTED("verdictCornersLifted"), NONE("verdictNone"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$

	private final String file;

	RoomIcon(String file) {
		this.file = file;
	}

	public static RoomIcon of(Verdict verdict) {
		return valueOf(verdict.name());
	}

	public ImageDescriptor descriptor() {
		return ImageDescriptor.createFromURL(RoomIcon.class.getResource("/icons/" + file + ".svg")); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** An image that is disposed with its owner. */
	public Image image(Control owner) {
		return new LocalResourceManager(JFaceResources.getResources(), owner).create(descriptor());
	}
}
