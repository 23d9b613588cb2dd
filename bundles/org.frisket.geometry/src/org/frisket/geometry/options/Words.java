package org.frisket.geometry.options;

import java.text.MessageFormat;
import java.util.ResourceBundle;

/** What is wrong with the value of an option, in the user's language; without help of Eclipse, as all of this bundle. */
final class Words {

	private static final String BUNDLE = "org.frisket.geometry.options.messages";

	private Words() {
	}

	static String of(String key, Object... values) {
		return MessageFormat.format(ResourceBundle.getBundle(BUNDLE).getString(key), values);
	}
}
