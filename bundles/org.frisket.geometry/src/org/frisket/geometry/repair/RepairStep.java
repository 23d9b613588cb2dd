package org.frisket.geometry.repair;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/**
 * One kind of repair. It has a constructor without arguments, holds no state between calls, and makes the same result
 * of the same artwork.
 */
public interface RepairStep {

	/** The options it understands, in the order in which a form shows them. */
	List<Option> options();

	/**
	 * The artwork with this one thing put right. Nothing moves further than the tolerance, unless an option of the step
	 * allows more in so many words.
	 *
	 * @param options values for {@link #options()}, defaults filled in
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor);
}
