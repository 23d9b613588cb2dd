package org.frisket.geometry.internal.repair;

import java.util.ResourceBundle;

/** What the options of the steps do, in the user's language; without help of Eclipse, as all of this bundle. */
final class Words {

	private static final String BUNDLE = "org.frisket.geometry.internal.repair.messages";

	private Words() {
	}

	static String of(String key) {
		return ResourceBundle.getBundle(BUNDLE).getString(key);
	}
}
