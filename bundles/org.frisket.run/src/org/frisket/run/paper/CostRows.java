package org.frisket.run.paper;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.Price;
import org.frisket.page.flow.Column;
import org.frisket.page.flow.Figures;
import org.frisket.run.MachineRun;
import org.frisket.run.RunCost;

/** What a run takes, and what of it falls to each job. */
final class CostRows {

	private static final double SQUARE_CM = 100;

	private CostRows() {
	}

	static void add(Column column, MachineRun run, RunCost cost) {
		totals(column, run, cost);
		if (!cost.shares().isEmpty()) {
			shares(column, cost);
		}
	}

	private static void totals(Column column, MachineRun run, RunCost cost) {
		column.heading(Messages.RunSheet_totals);
		RunCost.Seconds seconds = cost.seconds();
		long stops = IntStream.range(0, run.run().legs().size()).filter(run.run()::stopsBefore).count();
		double[] shares = { 0.25, 0.25, 0.25, 0.25 };
		column.row(List.of(Messages.RunSheet_time, Figures.time(seconds.all()), Messages.RunSheet_metres,
				Figures.metres(cost.metres())), shares, Column.BLACK);
		column.row(List.of(Messages.RunSheet_strokes, Figures.time(seconds.strokes()), Messages.RunSheet_travel,
				Figures.time(seconds.travel())), shares, Column.DARK);
		column.row(List.of(Messages.RunSheet_lifts, Figures.time(seconds.lifts()), Messages.RunSheet_stops,
				NLS.bind(Messages.RunSheet_stopsOf, stops, Figures.time(seconds.stops()))), shares, Column.DARK);
		for (RunCost.ToolUse use : cost.tools()) {
			String edge = use.edge().map(after -> NLS.bind(Messages.RunSheet_edge,
					Figures.number(after.wornMetres(), 1), Figures.number(after.dullAfter(), 0))).orElse("");
			column.row(List.of(LegText.name(use.tool()), Figures.metres(use.metres()), edge), new double[] { 0.25, 0.25, 0.5 },
					Column.DARK);
		}
		if (cost.material().isPresent() || cost.time().isPresent()) {
			column.row(List.of(Messages.RunSheet_material, price(cost.material()), Messages.RunSheet_timePrice,
					price(cost.time())), shares, Column.DARK);
			column.row(List.of(Messages.RunSheet_total, price(cost.total())), shares, Column.BLACK);
		}
	}

	private static String price(Optional<Price> price) {
		return price.map(RunCost::text).orElse(Messages.RunSheet_unknown);
	}

	private static void shares(Column column, RunCost cost) {
		column.heading(Messages.RunSheet_shares);
		double[] shares = { 0.4, 0.2, 0.2, 0.2 };
		column.row(List.of(Messages.RunSheet_shareJob, Messages.RunSheet_shareArea, Messages.RunSheet_time,
				Messages.RunSheet_total), shares, Column.DARK);
		for (RunCost.Share share : cost.shares()) {
			column.row(List.of(share.name(), NLS.bind(Messages.RunSheet_area, Figures.number(share.area() / SQUARE_CM, 1)),
					Figures.time(share.seconds()), price(share.total())), shares, Column.BLACK);
		}
	}
}
