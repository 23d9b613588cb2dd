package org.frisket.material.desk;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.calibration.Estimate;
import org.frisket.material.calibration.OffsetCalibration;
import org.frisket.material.calibration.OffsetReading;
import org.frisket.material.calibration.OffsetSheet;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Problem;

/**
 * What somebody read from an offset sheet, as it is typed.
 *
 * @param misses of the corners of each cell, in mm: above zero if it is overrun, below if it is rounded; empty for a cell
 *               that was not measured
 * @param best   the cell that looks best, from 0; below 0 if nobody said. It only counts where nothing was measured
 */
public record OffsetAnswers(OffsetSheet sheet, List<String> misses, int best) {

	/** Where a problem with the reading of a cell stands: this and the number of the cell, from 0. */
	public static final String MISS = "miss-";
	/** Where a problem with all readings together stands. */
	public static final String RESULT = "result";
	private static final String MM = "mm";

	public OffsetAnswers {
		misses = List.copyOf(misses);
	}

	/**
	 * A sheet from typed numbers.
	 *
	 * @throws IllegalArgumentException with the reason, if there is no such sheet
	 */
	public static OffsetSheet sheet(Blade blade, String step, String cells) {
		double count = TypedNumber.parse(cells, "");
		if (count != Math.rint(count) || count < OffsetCalibration.FEWEST || count > OffsetSheet.MOST) {
			throw new IllegalArgumentException(
					NLS.bind(Messages.OffsetAnswers_cells, OffsetCalibration.FEWEST, OffsetSheet.MOST));
		}
		double apart = TypedNumber.parse(step, MM);
		if (!(apart > 0)) {
			throw new IllegalArgumentException(Messages.SheetPlan_step);
		}
		return OffsetSheet.about(blade, apart, (int) count);
	}

	public boolean isEmpty() {
		return best < 0 && misses.stream().allMatch(String::isBlank);
	}

	/** All that is wrong, each at its place; empty if there is an estimate, or nothing was read yet. */
	public List<Problem> problems() {
		List<Problem> problems = new ArrayList<>();
		for (int i = 0; i < misses.size(); i++) {
			try {
				reading(i);
			} catch (IllegalArgumentException e) {
				problems.add(new Problem(MISS + i, e.getMessage()));
			}
		}
		if (problems.isEmpty() && !isEmpty()) {
			try {
				estimate();
			} catch (IllegalArgumentException e) {
				problems.add(new Problem(RESULT, e.getMessage()));
			}
		}
		return problems;
	}

	private OffsetReading reading(int cell) {
		if (misses.get(cell).isBlank()) {
			return null;
		}
		double miss = TypedNumber.parse(misses.get(cell), MM);
		if (Math.abs(miss) > 2) {
			throw new IllegalArgumentException(Messages.OffsetAnswers_far);
		}
		return new OffsetReading(sheet.offsets().get(cell), miss);
	}

	/**
	 * The offset of the blade.
	 *
	 * @throws IllegalArgumentException if it cannot be told, with the reason
	 */
	public Estimate estimate() {
		List<OffsetReading> readings = new ArrayList<>();
		for (int i = 0; i < misses.size(); i++) {
			OffsetReading reading = reading(i);
			if (reading != null) {
				readings.add(reading);
			}
		}
		return readings.isEmpty() && best >= 0 ? OffsetCalibration.best(sheet, best) : OffsetCalibration.of(readings);
	}

	/** The blade with what was found, to a thousandth of a millimetre. */
	public Blade correct(Blade blade) {
		return blade.withOffset(Math.rint(estimate().value() * 1000) / 1000);
	}
}
