package org.frisket.ui.sheets.internal.sheets;

import java.text.NumberFormat;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Sheet;
import org.frisket.sheets.imposing.LayingChoices;
import org.frisket.sheets.imposing.NoRoom;
import org.frisket.sheets.imposing.SheetPlan;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.sheets.internal.sheets.surface.SheetsSurface;

/** Shows layouts as they come, and makes the best one the job's. */
final class LayFeedback implements LayRun.Client {

	private static final int MOST_NAMED = 3;

	private final SheetsView view;
	private final SheetsSurface surface;
	private final LayBar bar;
	private SheetPlan plan;
	private List<Sheet> planned = List.of();

	LayFeedback(SheetsView view, SheetsSurface surface, LayBar bar) {
		this.view = view;
		this.surface = surface;
		this.bar = bar;
	}

	@Override
	public void begun() {
		bar.setLaying(true);
		bar.say(Messages.LayFeedback_begun);
		surface.flags().plant(List.of());
	}

	@Override
	public void better(SheetPlan better) {
		plan = better;
		planned = better.toSheets();
		surface.setHint(""); //$NON-NLS-1$
		surface.showGhosts(planned);
		bar.say(NLS.bind(Messages.LayFeedback_better,
				new Object[] { sheets(better), percent(better.utilisation()), left(better) }));
	}

	/** What is written under a sheet of the plan; null for any other sheet. */
	String caption(Sheet sheet) {
		int index = planned.indexOf(sheet);
		return index < 0 ? null
				: NLS.bind(Messages.LayFeedback_sheet, index + 1, percent(plan.sheets().get(index).utilisation()));
	}

	/** The same in as little room as can be; null for any other sheet. */
	String shortCaption(Sheet sheet) {
		int index = planned.indexOf(sheet);
		return index < 0 ? null
				: NLS.bind(Messages.SheetsView_two, index + 1, percent(plan.sheets().get(index).utilisation()));
	}

	@Override
	public void done(JobOnBench bench, LayingChoices choices, SheetPlan best) {
		view.actions().lay(bench, choices, best);
		if (!best.left().isEmpty()) {
			String reasons = best.left().stream().limit(MOST_NAMED).map(NoRoom::message)
					.collect(Collectors.joining("\n")); //$NON-NLS-1$
			bar.say(reasons);
		}
	}

	@Override
	public void failed(String message) {
		bar.say(message);
	}

	@Override
	public void ended() {
		planned = List.of();
		bar.setLaying(false);
		bar.say(""); //$NON-NLS-1$
		surface.hideGhosts();
	}

	private static String sheets(SheetPlan plan) {
		return plan.sheets().size() == 1 ? Messages.LayFeedback_oneSheet
				: NLS.bind(Messages.LayFeedback_sheets, plan.sheets().size());
	}

	private static String left(SheetPlan plan) {
		int left = plan.left().stream().mapToInt(NoRoom::quantity).sum();
		return left == 0 ? "" : NLS.bind(Messages.LayFeedback_left, left); //$NON-NLS-1$
	}

	static String percent(double share) {
		return NumberFormat.getPercentInstance().format(share);
	}
}
