package org.frisket.ui.orders.internal.week;

import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.orders.Entry;
import org.frisket.orders.paper.Days;
import org.frisket.orders.paper.StageWords;
import org.frisket.orders.week.WeekPlan;
import org.frisket.ui.orders.internal.ListAccess;

/** What assistive technology is told of the cards of a week: each with its column and its place in that. */
record WeekAccess(WeekStrip strip) implements ListAccess.Entries {

	@Override
	public int size() {
		return strip.plan().size();
	}

	@Override
	public int cursor() {
		return strip.place().map(strip.plan()::indexOf).orElse(-1);
	}

	@Override
	public boolean isSelected(int card) {
		return card == cursor();
	}

	@Override
	public String name(int card) {
		return strip.plan().at(card).map(place -> spoken(strip.plan(), place)).orElse(Messages.WeekStrip_name);
	}

	private static String spoken(WeekPlan plan, WeekPlan.Place place) {
		WeekPlan.Column column = plan.columns().get(place.column());
		Entry entry = plan.job(place);
		String job = NLS.bind(Messages.WeekStrip_spoken, new Object[] { entry.number(), entry.title(), entry.customer(),
				StageWords.of(entry.stage()), entry.due().map(Days::whole).orElse("") }); //$NON-NLS-1$
		return NLS.bind(Messages.WeekAccess_card, new Object[] { WeekPainter.title(plan, column), place.row() + 1,
				column.jobs().size() + column.more(), job });
	}

	@Override
	public Optional<Rectangle> boundsOf(int card) {
		return strip.plan().at(card).map(strip::boundsOf);
	}
}
