package org.frisket.prepare.checks;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;

/** What stocks allow, by their ids. Whoever knows the studio's own stock can stand in for {@link #BUILT_IN}. */
public interface StockLimits {

	/** Families of stock with values of common practice, no source, to be replaced by the studio's own test cuts. */
	StockLimits BUILT_IN = new FamilyLimits();

	/** The limits of a stock; empty if it is not known. */
	Optional<Limits> limits(String stock);

	/** The ids of all stocks that are known, the usual one first. */
	List<String> stocks();

	/** The sizes a stock comes in; empty if they are not known, and nothing is too large then. */
	default List<SheetSize> sheets(String stock) {
		return limits(stock).flatMap(Limits::sheet).stream().toList();
	}

	/**
	 * What its limits rest on where nobody measured them by a test cut: one sentence that marks them as common practice,
	 * without a source. Empty if the studio wrote them down, or the stock is built in or not known.
	 */
	default Optional<String> basis(String stock) {
		return Optional.empty();
	}

	/** What of their source cannot be used, one sentence each; what can be holds. */
	default List<String> problems() {
		return List.of();
	}

	/**
	 * The built-in ones and those of the studio's shelf, as the file of the studio's folder changes them now. What was
	 * looked up is kept until the studio's store changes, so that this may be asked for after every key; but not on the
	 * thread of a screen, since the store may have to be opened. A store that another process holds is waited for but
	 * shortly; what was known before then holds, and {@link #problems()} says so.
	 */
	static StockLimits ofStudio() {
		return ofStudio(ShelfLimits.SHORT_WAIT);
	}

	/** The same. @param patience for as long as another process is waited for that has the store open */
	static StockLimits ofStudio(Duration patience) {
		StudioFolder studio = Studio.folder();
		return LimitsFile.of(studio.limits()).over(ShelfLimits.of(studio, patience));
	}

	/**
	 * Those of {@link #ofStudio()} as far as they were looked up already: the store is not opened here, but looked into
	 * on a thread of its own if it has changed. For the thread of a screen.
	 */
	static StockLimits remembered() {
		StudioFolder studio = Studio.folder();
		return LimitsFile.of(studio.limits()).over(ShelfLimits.remembered(studio));
	}
}
