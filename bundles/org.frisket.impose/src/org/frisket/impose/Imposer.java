package org.frisket.impose;

import java.util.function.Consumer;

import org.frisket.geometry.Monitor;
import org.frisket.impose.search.Problem;
import org.frisket.impose.search.Searches;

/** Lays parts on sheets by their true shape: first somehow, at once, and then better as long as it may. */
public final class Imposer {

	private final Problem problem;

	/**
	 * Works out what room the parts need, which for hundreds takes seconds, to lay them more than once.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public Imposer(Imposition imposition, Monitor monitor) {
		problem = new Problem(imposition, monitor);
	}

	/** The same as {@link #lay(Imposition, Budget, Consumer, Monitor)}. */
	public Layout lay(Budget budget, Consumer<Layout> better, Monitor monitor) {
		return Searches.run(problem, budget, better, monitor);
	}

	/**
	 * The best layout a budget gives; no two parts of it come nearer than the gap. What is too large for every sheet, or
	 * found no sheet, is left.
	 * <p>
	 * For a budget of steps the same input gives the same layout.
	 *
	 * @param better  told of each better layout as it is found, on the calling thread
	 * @param monitor when cancelled the best so far is returned
	 */
	public static Layout lay(Imposition imposition, Budget budget, Consumer<Layout> better, Monitor monitor) {
		return new Imposer(imposition, monitor).lay(budget, better, monitor);
	}
}
