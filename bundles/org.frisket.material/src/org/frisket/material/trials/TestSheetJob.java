package org.frisket.material.trials;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.PathData;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.NativeScale;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;

/**
 * A test sheet as a job that is exported like any other: one element a cell, worked with the sheet's tool and the cell's
 * passes, and before them the labels for the pen. A job cannot hold pressure, speed and exposure of an operation; those
 * of a cell are with the {@link TestSheet}, and its element is named after it.
 */
public final class TestSheetJob {

	private TestSheetJob() {
	}

	/** The job with shapes of the usual size. */
	public static Job of(TestSheet sheet, Machine machine) {
		return of(sheet, machine, SheetLayout.USUAL_SIZE);
	}

	/**
	 * The job; its upper left corner is at the zero of the bench.
	 *
	 * @param size side of the square of each trial, in mm
	 * @throws IllegalArgumentException if the sheet does not fit on the machine, or a value cannot be set on it
	 */
	public static Job of(TestSheet sheet, Machine machine, double size) {
		check(sheet.across(), machine);
		check(sheet.down(), machine);
		SheetLayout layout = new SheetLayout(sheet, size);
		if (layout.width() > machine.area().usableWidth() || layout.height() > machine.area().usableHeight()) {
			throw new IllegalArgumentException(NLS.bind(Messages.TestSheetJob_tooLarge,
					new Object[] { Sweep.plain(Math.ceil(layout.width())), Sweep.plain(Math.ceil(layout.height())),
							machine.name(), Sweep.plain(machine.area().usableWidth()),
							Sweep.plain(machine.area().usableHeight()) }));
		}
		return job(sheet, layout);
	}

	/** @throws IllegalArgumentException if a value of the sweep cannot be set on the machine; the message says which */
	public static void check(Sweep sweep, Machine machine) {
		NativeScale scale = switch (sweep.parameter()) {
		case PRESSURE -> machine.pressure();
		case SPEED -> machine.speed();
		case PASSES -> machine.mostPasses() == 1 ? null : new NativeScale("", 1, machine.mostPasses(), 1, null);
		case EXPOSURE -> null;
		};
		for (double value : sweep.values()) {
			if (scale != null && !scale.has(value) || sweep.parameter() == Parameter.PASSES && value > machine.mostPasses()) {
				double most = scale == null ? 1 : scale.most();
				throw new IllegalArgumentException(NLS.bind(Messages.TestSheet_scale,
						new Object[] { sweep.parameter().word(), Sweep.plain(value), machine.name(),
								Sweep.plain(scale == null ? 1 : scale.least()), Sweep.plain(most),
								Sweep.plain(scale == null ? 1 : scale.step()) }));
			}
		}
	}

	private static Job job(TestSheet sheet, SheetLayout layout) {
		Job job = Jobs.create("test-sheet", NLS.bind(Messages.TestSheetJob_title, sheet.id()));
		Layer layer = Jobs.addLayer(job, Messages.TestSheetJob_layer);
		if (!sheet.stock().stock().isEmpty()) {
			layer.setStock(sheet.stock().stock());
		}
		Outline labels = Jobs.addOutline(layer, layout.labels());
		labels.setName(layout.axes());
		Jobs.addOperation(labels, OperationKind.DRAW);
		for (CellPlace place : sheet.places()) {
			Outline cell = Jobs.addOutline(layer, PathData.format(layout.cut(place)));
			cell.setName(name(sheet, place));
			Operation operation = Jobs.addOperation(cell, sheet.setup().operation());
			operation.setTool(sheet.setup().tool());
			operation.setPasses(sheet.settings(place).passes());
		}
		return job;
	}

	/** A cell in words: {@code B3: pressure 20, speed 30}. */
	private static String name(TestSheet sheet, CellPlace place) {
		return place + ": " + sheet.across().parameter().word() + ' '
				+ Sweep.plain(sheet.across().values().get(place.column())) + ", " + sheet.down().parameter().word() + ' '
				+ Sweep.plain(sheet.down().values().get(place.row()));
	}
}
