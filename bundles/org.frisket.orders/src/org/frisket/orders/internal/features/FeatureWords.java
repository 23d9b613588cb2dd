package org.frisket.orders.internal.features;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** What the features of a job and their values are called; what is newer than the list goes by its own name. */
public final class FeatureWords {

	private static final String BASE = FeatureWords.class.getPackageName() + ".features";

	private final ResourceBundle words;

	private FeatureWords(ResourceBundle words) {
		this.words = words;
	}

	/** In the language of the locale if it is one of the program's, else in English. */
	public static FeatureWords in(Locale locale) {
		return new FeatureWords(ResourceBundle.getBundle(BASE, locale, FeatureWords.class.getClassLoader(),
				ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
	}

	/** What a feature is called. */
	public String feature(String name) {
		return word(name, name);
	}

	/** What one of a few values is called. */
	public String value(String type, String literal) {
		return word(type + "." + literal, literal);
	}

	/** Whether there is a word of our own for it. */
	public boolean knows(String key) {
		return words.containsKey(key);
	}

	private String word(String key, String otherwise) {
		try {
			return words.getString(key);
		} catch (MissingResourceException e) {
			return otherwise;
		}
	}
}
