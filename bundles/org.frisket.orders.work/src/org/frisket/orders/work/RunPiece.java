package org.frisket.orders.work;

/**
 * The pieces of a job in one stock and colour that are on a run.
 *
 * @param job     its id
 * @param number  on its docket
 * @param pieces  that were planned
 * @param print   whether they are to be printed before they are cut
 * @param printed how many were printed well
 * @param cut     how many were cut well
 * @param spoiled in either
 */
public record RunPiece(String job, long number, String title, StockColour of, int pieces, boolean print, int printed,
		int cut, int spoiled) {

	/** How many of them are still to be done; none where there is nothing to do. */
	public int left(Step step) {
		if (step == Step.PRINT) {
			return print ? Math.max(0, pieces - printed) : 0;
		}
		return Math.max(0, pieces - cut);
	}
}
