package org.frisket.ui.views.internal.properties.fields;

import org.eclipse.jface.dialogs.DialogSettings;
import org.eclipse.jface.dialogs.IDialogSettings;
import org.eclipse.ui.PlatformUI;
import org.osgi.framework.FrameworkUtil;

/** Remembers which sections are folded, from one start of the program to the next. */
final class FoldMemory {

	private static final String SECTION = "properties.folded"; //$NON-NLS-1$

	private FoldMemory() {
	}

	private static IDialogSettings settings() {
		return DialogSettings.getOrCreateSection(PlatformUI.getDialogSettingsProvider(FrameworkUtil.getBundle(FoldMemory.class))
				.getDialogSettings(), SECTION);
	}

	/** @param otherwise for a section that was never touched */
	static boolean isFolded(String section, boolean otherwise) {
		String kept = settings().get(section);
		return kept == null ? otherwise : Boolean.parseBoolean(kept);
	}

	static void setFolded(String section, boolean folded) {
		settings().put(section, folded);
	}
}
