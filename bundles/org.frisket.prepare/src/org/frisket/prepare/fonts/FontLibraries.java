package org.frisket.prepare.fonts;

import java.util.Comparator;
import java.util.List;

import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.extension.ExtensionPoint;
import org.frisket.prepare.internal.ContributedFontSource;
import org.frisket.typography.source.FontLibrary;
import org.frisket.typography.source.FontSource;

/** The fonts at hand: those of all contributed sources, the built-in ones among them. */
public final class FontLibraries {

	/** The extension point {@code org.frisket.typography.fontSources}, whose entries implement {@link FontSource}. */
	public static final ExtensionPoint<FontSource> POINT = new ExtensionPoint<>("org.frisket.typography.fontSources",
			FontSource.class);

	private static final int USUAL_ORDER = 150;

	private FontLibraries() {
	}

	private static final class Installed {

		static final List<ContributedFontSource> CONTRIBUTED = POINT.contributions().stream()
				.sorted(Comparator.comparingInt(FontLibraries::order)).map(ContributedFontSource::new).toList();
		/** Without a registry, as in plain Java, the built-in sources are taken as they are. */
		static final FontLibrary LIBRARY = CONTRIBUTED.isEmpty() ? FontLibrary.standard()
				: new FontLibrary(CONTRIBUTED);
	}

	private static int order(Contribution<FontSource> source) {
		String order = source.attribute("order").orElse("");
		return order.matches("-?\\d{1,6}") ? Integer.parseInt(order) : USUAL_ORDER;
	}

	/**
	 * The fonts of all sources, asked in their order: the product's own before those of the system. Nothing is read
	 * before a font is asked for.
	 */
	public static FontLibrary installed() {
		return Installed.LIBRARY;
	}

	/** Sources that have failed so far, each with its bundle's name. They count as empty. */
	public static List<ContributionException> failures() {
		return Installed.CONTRIBUTED.stream().flatMap(source -> source.failure().stream()).toList();
	}
}
