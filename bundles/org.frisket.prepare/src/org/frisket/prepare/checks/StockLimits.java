package org.frisket.prepare.checks;

import java.util.List;
import java.util.Optional;

import org.frisket.studio.Studio;

/** What stocks allow, by their ids. Whoever knows the studio's own stock can stand in for {@link #BUILT_IN}. */
public interface StockLimits {

	/** Families of stock with values of common practice, no source, to be replaced by the studio's own test cuts. */
	StockLimits BUILT_IN = new FamilyLimits();

	/** The limits of a stock; empty if it is not known. */
	Optional<Limits> limits(String stock);

	/** The ids of all stocks that are known, the usual one first. */
	List<String> stocks();

	/** What of their source cannot be used, one sentence each; what can be holds. */
	default List<String> problems() {
		return List.of();
	}

	/** The built-in ones as the file of the studio's folder changes them now. */
	static StockLimits ofStudio() {
		return StudioLimits.of(Studio.folder().limits());
	}
}
