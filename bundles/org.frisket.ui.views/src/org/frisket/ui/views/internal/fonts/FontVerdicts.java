package org.frisket.ui.views.internal.fonts;

import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;

import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;
import org.frisket.prepare.fonts.FontVerdict;
import org.frisket.typography.source.FontEntry;

/** What is to be said of the fonts of a list, found out in the background; and the order that follows from it. */
final class FontVerdicts {

	/** What the list goes by. */
	enum Order {
		NAME(null), FITNESS(FontVerdict.FITTEST), X_HEIGHT(FontVerdict.TALLEST);

		private final Comparator<FontVerdict> comparator;

		Order(Comparator<FontVerdict> comparator) {
			this.comparator = comparator;
		}
	}

	private final MadeLater<FontEntry, FontVerdict> made;

	/** @param changed run on the UI thread when more is known */
	FontVerdicts(BiFunction<FontEntry, Monitor, FontVerdict> trial, Display display, Runnable changed) {
		made = new MadeLater<>(Messages.FontVerdicts_job, Integer.MAX_VALUE, Integer.MAX_VALUE, trial, display, changed);
	}

	/** Null while it is not known, which asks for it. */
	FontVerdict of(FontFamily family) {
		return made.get(family.plain());
	}

	/** Null while it is not known. */
	FontVerdict known(FontFamily family) {
		return made.known(family.plain());
	}

	/** Asks for what an order has to know of these families and for nothing else. */
	void expect(List<FontFamily> families, Order order) {
		made.forget();
		if (order.comparator != null) {
			// the first last: what is asked for last is made first
			for (int i = families.size() - 1; i >= 0; i--) {
				of(families.get(i));
			}
		}
	}

	/** How many of them are still to be found out. */
	int missing(List<FontFamily> families) {
		return (int) families.stream().filter(family -> known(family) == null).count();
	}

	/** The families in an order; as they are while anything is missing that it goes by, so that no row moves about. */
	List<FontFamily> ordered(List<FontFamily> families, Order order) {
		return order.comparator == null || missing(families) > 0 ? families
				: families.stream().sorted(Comparator.comparing(this::known, order.comparator)).toList();
	}

	void close() {
		made.close();
	}
}
