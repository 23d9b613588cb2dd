package org.frisket.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** All pages of one language, in the order in which a newcomer would read them. */
public final class HelpPages {

	/** The page that leads to the others. */
	public static final String FIRST = "start";

	/** Ids of the pages. */
	public static final List<String> IDS = List.of(FIRST, "bench", "layout", "wording", "typecase", "outlines", "mats",
			"properties", "stack", "pictures", "shelf", "makeready", "testsheets", "sheets", "run", "printcut", "handoff", "export",
			"files", "orders", "desks", "keys", "safety");

	private static final List<String> LANGUAGES = List.of("en", "de");

	private final List<HelpPage> pages;

	private HelpPages(String language) {
		pages = IDS.stream().map(id -> read(language, id)).toList();
	}

	/** The pages in the language of a locale, or in English if there are none. */
	public static HelpPages in(Locale locale) {
		return new HelpPages(LANGUAGES.contains(locale.getLanguage()) ? locale.getLanguage() : LANGUAGES.get(0));
	}

	private static HelpPage read(String language, String id) {
		String place = "pages/" + language + "/" + id + ".txt";
		try (InputStream in = HelpPages.class.getResourceAsStream(place)) {
			if (in == null) {
				throw new IllegalStateException("there is no page " + place);
			}
			return PageReader.read(id, new String(in.readAllBytes(), StandardCharsets.UTF_8));
		} catch (IOException e) {
			throw new UncheckedIOException("the page " + place + " cannot be read", e);
		}
	}

	public List<HelpPage> all() {
		return pages;
	}

	public Optional<HelpPage> page(String id) {
		return pages.stream().filter(page -> page.id().equals(id)).findFirst();
	}
}
