package org.frisket.material.trials;

import java.util.List;

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

	/** Drawn capitals below 2 mm are hard to read; common practice, no source. */
	private static final double LABEL = 2.2;
	private static final double GAP = 2.5;
	private static final double LINE = 3.2;
	private static final int TITLE_LINES = 2;

	private final TestSheet sheet;
	private final double side;
	private final double top;

	private TestSheetJob(TestSheet sheet) {
		this.sheet = sheet;
		double widest = 0;
		for (int row = 0; row < sheet.down().values().size(); row++) {
			widest = Math.max(widest, StrokeFigures.width(rowLabel(row), LABEL));
		}
		side = widest + GAP;
		top = (TITLE_LINES + 1) * LINE + GAP / 2;
	}

	/**
	 * The job; its upper left corner is at the zero of the bench.
	 *
	 * @throws IllegalArgumentException if the sheet does not fit on the machine, or a value cannot be set on it
	 */
	public static Job of(TestSheet sheet, Machine machine) {
		check(sheet.across(), machine);
		check(sheet.down(), machine);
		TestSheetJob made = new TestSheetJob(sheet);
		if (made.width() > machine.area().usableWidth() || made.height() > machine.area().usableHeight()) {
			throw new IllegalArgumentException(NLS.bind(Messages.TestSheetJob_tooLarge,
					new Object[] { Sweep.plain(Math.ceil(made.width())), Sweep.plain(Math.ceil(made.height())),
							machine.name(), Sweep.plain(machine.area().usableWidth()),
							Sweep.plain(machine.area().usableHeight()) }));
		}
		return made.job();
	}

	private static void check(Sweep sweep, Machine machine) {
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

	private double width() {
		List<Double> columns = sheet.across().values();
		double title = Math.max(StrokeFigures.width(axes(), LABEL), StrokeFigures.width(facts(), LABEL));
		return Math.max(title, side + columns.size() * TestPattern.WIDTH + (columns.size() - 1) * GAP);
	}

	private double height() {
		int rows = sheet.down().values().size();
		return top + rows * (LINE + TestPattern.HEIGHT) + (rows - 1) * GAP;
	}

	private double x(int column) {
		return side + column * (TestPattern.WIDTH + GAP);
	}

	private double y(int row) {
		return top + row * (LINE + TestPattern.HEIGHT + GAP);
	}

	private Job job() {
		Job job = Jobs.create("test-sheet", NLS.bind(Messages.TestSheetJob_title, sheet.id()));
		Layer layer = Jobs.addLayer(job, Messages.TestSheetJob_layer);
		if (!sheet.stock().stock().isEmpty()) {
			layer.setStock(sheet.stock().stock());
		}
		Outline labels = Jobs.addOutline(layer, labels());
		labels.setName(axes());
		Jobs.addOperation(labels, OperationKind.DRAW);
		for (CellPlace place : sheet.places()) {
			Outline cell = Jobs.addOutline(layer,
					PathData.format(TestPattern.at(x(place.column()), y(place.row()) + LINE)));
			cell.setName(name(place));
			Operation operation = Jobs.addOperation(cell, sheet.setup().operation());
			operation.setTool(sheet.setup().tool());
			operation.setPasses(sheet.settings(place).passes());
		}
		return job;
	}

	/** A cell in words: {@code B3: pressure 20, speed 30}. */
	private String name(CellPlace place) {
		return place + ": " + sheet.across().parameter().word() + ' '
				+ Sweep.plain(sheet.across().values().get(place.column())) + ", " + sheet.down().parameter().word() + ' '
				+ Sweep.plain(sheet.down().values().get(place.row()));
	}

	private String axes() {
		return sheet.across().parameter().word() + " across - " + sheet.down().parameter().word() + " down";
	}

	private String facts() {
		StockFacts stock = sheet.stock();
		String weight = stock.grammage() > 0 ? ' ' + Sweep.plain(stock.grammage()) + " gsm" : "";
		return sheet.day() + " " + sheet.id() + ' ' + (stock.stock().isEmpty() ? stock.family().name() : stock.stock())
				+ weight;
	}

	private String columnLabel(int column) {
		return (char) ('A' + column) + "  " + Sweep.plain(sheet.across().values().get(column));
	}

	private String rowLabel(int row) {
		return row + 1 + "  " + Sweep.plain(sheet.down().values().get(row));
	}

	private String labels() {
		StringBuilder path = new StringBuilder();
		StrokeFigures.write(axes(), 0, 0, LABEL, path);
		StrokeFigures.write(facts(), 0, LINE, LABEL, path);
		for (int column = 0; column < sheet.across().values().size(); column++) {
			StrokeFigures.write(columnLabel(column), x(column), TITLE_LINES * LINE + GAP / 4, LABEL, path);
		}
		for (int row = 0; row < sheet.down().values().size(); row++) {
			StrokeFigures.write(rowLabel(row), 0, y(row) + LINE + (TestPattern.HEIGHT - LABEL) / 2, LABEL, path);
		}
		for (CellPlace place : sheet.places()) {
			StrokeFigures.write(place.toString(), x(place.column()), y(place.row()), LABEL, path);
		}
		return path.toString();
	}
}
