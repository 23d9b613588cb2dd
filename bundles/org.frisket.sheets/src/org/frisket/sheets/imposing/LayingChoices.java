package org.frisket.sheets.imposing;

import org.eclipse.osgi.util.NLS;
import org.frisket.impose.Turning;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Laying;
import org.frisket.prepare.Figures;

/**
 * How parts are to be laid on sheets; lengths in mm.
 *
 * @param width   of a sheet along x; 0 leaves it to the stock. Of a roll it has no meaning
 * @param height  of a sheet along y, or the width of a roll; 0 leaves it to the stock
 * @param turning what parts may do; the grain of a stock may allow less
 * @param apart   whether the pieces of an element are laid one by one
 * @param byJob   whether no sheet holds parts of two jobs
 * @param seed    of all chance
 * @param most    how many sheets of each stock at most; 0 for as many as are needed
 */
public record LayingChoices(double width, double height, boolean roll, double gap, double margin, Turning turning,
		boolean apart, boolean byJob, int seed, int most) {

	/** @throws IllegalArgumentException with a sentence for people, if a length is below zero or no number */
	public LayingChoices {
		for (double length : new double[] { width, height, gap, margin }) {
			if (!(length >= 0) || Double.isInfinite(length)) {
				throw new IllegalArgumentException(
						NLS.bind(Messages.LayingChoices_length, Figures.length(length, 2)));
			}
		}
		if (most < 0) {
			throw new IllegalArgumentException(NLS.bind(Messages.LayingChoices_most, most));
		}
	}

	/** As a job has it. @param laying null for a job that was never laid */
	public static LayingChoices of(Laying laying) {
		Laying from = laying == null ? FrisketFactory.INSTANCE.createLaying() : laying;
		return new LayingChoices(from.getWidth(), from.getHeight(), from.isRoll(), from.getGap(), from.getMargin(),
				Turning.valueOf(from.getTurning().name()), from.isApart(), from.isByJob(), from.getSeed(), 0);
	}

	/** As a job keeps it. */
	public Laying toLaying() {
		Laying laying = FrisketFactory.INSTANCE.createLaying();
		laying.setWidth(width);
		laying.setHeight(height);
		laying.setRoll(roll);
		laying.setGap(gap);
		laying.setMargin(margin);
		laying.setTurning(org.frisket.model.Turning.valueOf(turning.name()));
		laying.setApart(apart);
		laying.setByJob(byJob);
		laying.setSeed(seed);
		return laying;
	}
}
