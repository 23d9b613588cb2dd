package org.frisket.ui.orders.internal.week;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.StageStep;
import org.frisket.orders.paper.StageWords;
import org.frisket.orders.week.WeekPlan;
import org.frisket.ui.ThemeColour;

/** Paints a week: heads that stay, and below them cards that scroll. */
final class WeekPainter {

	private static final int SPACE_PX = 4;
	private static final int LINES = 3;
	private static final int MARK_PX = 3;
	private static final int OPAQUE = 255;
	private static final int FAINT = 24;

	private final WeekStrip strip;
	private final Font plain = JFaceResources.getFont(JFaceResources.DEFAULT_FONT);
	private final Font bold = JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT);
	private final int line;

	WeekPainter(WeekStrip strip) {
		this.strip = strip;
		GC gc = new GC(strip);
		gc.setFont(plain);
		line = gc.getFontMetrics().getHeight();
		gc.dispose();
	}

	int headHeight() {
		return line + 3 * SPACE_PX;
	}

	/** With the space below it. */
	int cardHeight() {
		return LINES * line + MARK_PX + 5 * SPACE_PX;
	}

	private int left(int column, int columns) {
		return SPACE_PX + column * (strip.getClientArea().width - SPACE_PX) / columns;
	}

	/** -1 beside all of them. */
	int columnAt(int x) {
		int columns = strip.plan().columns().size();
		for (int i = 0; i < columns; i++) {
			if (x >= left(i, columns) && x < left(i + 1, columns)) {
				return i;
			}
		}
		return -1;
	}

	Rectangle card(WeekPlan.Place place) {
		int columns = strip.plan().columns().size();
		int left = left(place.column(), columns);
		return new Rectangle(left, headHeight() + place.row() * cardHeight() - strip.scrolled(),
				left(place.column() + 1, columns) - left - SPACE_PX, cardHeight() - SPACE_PX);
	}

	/** @param over column over which a card is held; -1 for none */
	void paint(GC gc, WeekPlan plan, String hint, WeekPlan.Place selected, int over) {
		gc.setForeground(strip.getForeground());
		int columns = plan.columns().size();
		Rectangle area = strip.getClientArea();
		for (int i = 0; i < columns; i++) {
			WeekPlan.Column column = plan.columns().get(i);
			int left = left(i, columns);
			int width = left(i + 1, columns) - left - SPACE_PX;
			boolean today = column.day().filter(plan.today()::equals).isPresent();
			if (today || i == over) {
				gc.setBackground(strip.getForeground());
				gc.setAlpha(i == over ? 2 * FAINT : FAINT);
				gc.fillRectangle(left - SPACE_PX / 2, 0, width + SPACE_PX, area.height);
				gc.setAlpha(OPAQUE);
			}
			cards(gc, plan, i, selected);
			head(gc, plan, column, new Rectangle(left, 0, width, headHeight()), today);
		}
		if (plan.size() == 0) {
			gc.setFont(plain);
			Point size = gc.textExtent(hint);
			gc.drawText(hint, Math.max(SPACE_PX, (area.width - size.x) / 2), headHeight() + 2 * SPACE_PX, true);
		}
	}

	private void head(GC gc, WeekPlan plan, WeekPlan.Column column, Rectangle place, boolean today) {
		gc.setBackground(strip.getBackground());
		gc.fillRectangle(place.x - SPACE_PX / 2, 0, place.width + SPACE_PX, place.height - SPACE_PX);
		gc.setFont(today ? bold : plain);
		String word = word(column);
		String head = title(plan, column);
		int jobs = column.jobs().size() + column.more();
		String count = jobs == 0 ? "" : String.valueOf(jobs); //$NON-NLS-1$
		// well apart from the head of the next column
		int end = place.x + place.width - 3 * SPACE_PX;
		int room = end - place.x - gc.textExtent(count).x - SPACE_PX;
		// where there is no room for both, that it is today is seen by the ground
		gc.drawText(shortened(gc, gc.textExtent(head).x <= room ? head : word, room), place.x, SPACE_PX, true);
		gc.drawText(count, end - gc.textExtent(count).x, SPACE_PX, true);
		int rule = place.height - SPACE_PX - 1;
		if (today) {
			gc.setBackground(ThemeColour.BENCH_ACCENT.colour());
			gc.fillRectangle(place.x, rule - 1, place.width, 3);
		} else {
			gc.drawLine(place.x, rule, place.x + place.width, rule);
		}
	}

	/** What a column is called; that of today says so. */
	static String title(WeekPlan plan, WeekPlan.Column column) {
		String word = word(column);
		return column.day().filter(plan.today()::equals).isPresent() ? NLS.bind(Messages.WeekStrip_today, word) : word;
	}

	private static String word(WeekPlan.Column column) {
		return switch (column.kind()) {
		case LATE -> Messages.WeekStrip_lateHead;
		case LATER -> Messages.WeekStrip_laterHead;
		case DAY -> day(column.day().orElseThrow());
		};
	}

	private static String day(LocalDate day) {
		Locale locale = Locale.getDefault();
		return day.getDayOfWeek().getDisplayName(TextStyle.SHORT, locale) + ' ' + day.getDayOfMonth();
	}

	private void cards(GC gc, WeekPlan plan, int index, WeekPlan.Place selected) {
		WeekPlan.Column column = plan.columns().get(index);
		List<Entry> jobs = column.jobs();
		int first = Math.max(0, strip.scrolled() / cardHeight());
		int last = Math.min(jobs.size() - 1, (strip.scrolled() + strip.getClientArea().height) / cardHeight());
		for (int row = first; row <= last; row++) {
			WeekPlan.Place place = new WeekPlan.Place(index, row);
			card(gc, jobs.get(row), card(place), place.equals(selected), plan.today());
		}
		if (column.more() > 0) {
			Rectangle place = card(new WeekPlan.Place(index, jobs.size()));
			gc.setFont(plain);
			gc.drawText(shortened(gc, NLS.bind(Messages.WeekStrip_more, column.more()), place.width), place.x, place.y,
					true);
		}
	}

	private void card(GC gc, Entry job, Rectangle box, boolean isSelected, LocalDate today) {
		gc.setBackground(strip.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
		gc.fillRectangle(box);
		gc.setForeground(strip.getForeground());
		if (isSelected) {
			gc.setForeground(ThemeColour.BENCH_ACCENT.colour());
			gc.setLineWidth(strip.isFocusControl() ? 3 : 2);
			gc.drawRectangle(box.x + 1, box.y + 1, box.width - 2, box.height - 2);
			gc.setLineWidth(1);
		} else {
			gc.setAlpha(4 * FAINT);
			gc.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
			gc.setAlpha(OPAQUE);
		}
		gc.setForeground(strip.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
		int x = box.x + 2 * SPACE_PX;
		int room = box.width - 4 * SPACE_PX;
		int y = box.y + SPACE_PX;
		gc.setFont(bold);
		String number = String.valueOf(job.number());
		gc.drawText(shortened(gc, number, room), x, y, true);
		int used = gc.textExtent(number).x + 2 * SPACE_PX;
		gc.setFont(plain);
		String stage = job.isLate(today) ? Messages.WeekStrip_late + " · " + StageWords.of(job.stage()) //$NON-NLS-1$
				: StageWords.of(job.stage());
		String shown = shortened(gc, stage, room - used);
		gc.drawText(shown, x + room - gc.textExtent(shown).x, y, true);
		gc.drawText(shortened(gc, job.title(), room), x, y + line, true);
		gc.drawText(shortened(gc, job.customer(), room), x, y + 2 * line, true);
		way(gc, job.stage(), x, box.y + box.height - SPACE_PX - MARK_PX, room);
	}

	/** How far a job has come, as steps that are done; none of one that is put aside. */
	private void way(GC gc, Stage stage, int x, int y, int room) {
		if (StageStep.isAside(stage)) {
			return;
		}
		int steps = Stage.DELIVERED.getValue() - Stage.ENQUIRY.getValue();
		int done = stage.getValue() - Stage.ENQUIRY.getValue();
		gc.setBackground(strip.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
		for (int i = 0; i < steps; i++) {
			int from = x + i * room / steps;
			gc.setAlpha(i < done ? OPAQUE : 2 * FAINT);
			gc.fillRectangle(from, y, (i + 1) * room / steps - i * room / steps - 2, MARK_PX);
		}
		gc.setAlpha(OPAQUE);
	}

	/** As much of a text as is no wider than so many pixels. */
	private static String shortened(GC gc, String text, int room) {
		String one = text.lines().findFirst().orElse(""); //$NON-NLS-1$
		int end = Math.min(one.length(), Math.max(0, room));
		if (end == one.length() && gc.textExtent(one).x <= room) {
			return one;
		}
		while (end > 0 && gc.textExtent(one.substring(0, end) + "…").x > room) { //$NON-NLS-1$
			end = one.offsetByCodePoints(end, -1);
		}
		return end <= 0 ? "" : one.substring(0, end) + "…"; //$NON-NLS-1$ //$NON-NLS-2$
	}
}
