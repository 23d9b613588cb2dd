package org.frisket.ui.orders.internal.docket;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.model.StageChange;
import org.frisket.orders.Entry;
import org.frisket.orders.Paper;
import org.frisket.orders.paper.Days;
import org.frisket.orders.paper.DocketFacts;
import org.frisket.orders.paper.StageWords;
import org.frisket.orders.paper.Titles;
import org.frisket.page.flow.Figures;
import org.frisket.ui.ThemeColour;

/** Writes what is known of a job into a column, a line for each fact. */
final class DocketLines {

	private static final int LEAST_PX = 60;
	private static final int PERCENT = 100;
	/** Of a list; more would only be scrolled past, and stand on the printed docket. */
	private static final int MOST = 40;
	private static final DateTimeFormatter TIME = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM,
			FormatStyle.SHORT);

	private final Composite column;
	private final Figures figures = new Figures(Means.form().inches());

	DocketLines(Composite column) {
		this.column = column;
	}

	void fill(Sight sight) {
		head(sight);
		warnings(sight);
		design(sight);
		sight.facts().ifPresent(facts -> {
			parts(facts);
			work(facts);
			sheets(facts);
			texts(Messages.DocketLines_mind, facts.cautions());
			texts(Messages.DocketLines_notes, facts.notes().lines().filter(line -> !line.isBlank()).toList());
			signed(facts);
		});
		history(sight);
		papers(sight);
	}

	private void head(Sight sight) {
		Entry entry = sight.entry();
		Composite head = grid(2);
		Composite words = new Composite(head, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(words);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
		label(words, String.valueOf(entry.number()), null)
				.setFont(JFaceResources.getFont(JFaceResources.HEADER_FONT));
		label(words, entry.title(), null).setFont(JFaceResources.getFontRegistry()
				.getBold(JFaceResources.DEFAULT_FONT));
		new CodeCanvas(head, String.valueOf(entry.number()));
		Composite rows = grid(2);
		row(rows, Messages.DocketLines_customer, entry.customer().isEmpty() ? Messages.DocketLines_unknown
				: entry.customer());
		row(rows, Messages.DocketLines_due, due(entry));
		row(rows, Messages.DocketLines_stage, NLS.bind(Messages.DocketLines_stageSince, StageWords.of(entry.stage()),
				TIME.format(entry.since().atZone(ZoneId.systemDefault()))));
		row(rows, Messages.DocketLines_quantity, Figures.number(entry.quantity(), 0));
		if (!sight.agreement().isBlank()) {
			row(rows, Messages.DocketLines_agreement, sight.agreement());
		}
	}

	private static String due(Entry entry) {
		String day = entry.due().map(Days::whole).orElse(Messages.DocketLines_noDay);
		return entry.isLate(LocalDate.now()) ? NLS.bind(Messages.DocketLines_late, day) : day;
	}

	private void warnings(Sight sight) {
		if (!sight.trouble().isEmpty()) {
			label(column, sight.trouble(), ThemeColour.FINDING_MESSAGE.colour());
		}
		sight.facts().ifPresent(facts -> facts.blocking().forEach(text -> label(column,
				NLS.bind(Messages.DocketLines_blocked, text), ThemeColour.FINDING_MESSAGE.colour())));
	}

	/** The picture, or what to do where there is none yet. */
	private void design(Sight sight) {
		if (sight.facts().isEmpty()) {
			if (sight.trouble().isEmpty()) {
				label(column, Messages.DocketLines_reading, null);
			}
			return;
		}
		sight.picture().ifPresent(picture -> {
			new PictureCanvas(column, picture);
			label(column, Titles.joined(figures.size(sight.facts().get().width(), sight.facts().get().height()),
					picture.text()),
					null);
		});
		if (sight.picture().isEmpty() && sight.facts().get().parts().isEmpty()) {
			label(column, Messages.DocketLines_nothingDesigned, null);
		} else if (!sight.whole()) {
			label(column, Messages.DocketLines_working, null);
		}
	}

	private void parts(DocketFacts facts) {
		if (facts.parts().isEmpty()) {
			return;
		}
		heading(Messages.DocketLines_parts);
		Composite rows = grid(4);
		String last = null;
		for (DocketFacts.Part part : facts.parts().subList(0, Math.min(MOST, facts.parts().size()))) {
			String group = Titles.joined(part.stock(), part.colour());
			if (!group.equals(last)) {
				cells(rows, group, Messages.DocketLines_size, Messages.DocketLines_each, Messages.DocketLines_all);
				last = group;
			}
			cells(rows, part.title(), figures.size(part.width(), part.height()), Figures.number(part.each(), 0),
					Figures.number(part.all(), 0));
		}
		more(facts.parts().size());
	}

	private void work(DocketFacts facts) {
		if (facts.work().isEmpty()) {
			return;
		}
		heading(Messages.DocketLines_work);
		for (DocketFacts.Work each : facts.work().subList(0, Math.min(MOST, facts.work().size()))) {
			label(column, NLS.bind(Messages.DocketLines_workOf, new Object[] { each.stock(), each.operation(),
					each.tool() }), null);
			Label second = label(column,
					Titles.joined(each.settings(), each.basis(), String.join(", ", each.places())), null); //$NON-NLS-1$
			GridDataFactory.createFrom((GridData) second.getLayoutData()).indent(LEAST_PX / 4, 0)
					.applyTo(second);
		}
		more(facts.work().size());
	}

	private void sheets(DocketFacts facts) {
		if (facts.sheets().isEmpty() && facts.seconds() <= 0) {
			return;
		}
		heading(Messages.DocketLines_sheets);
		Composite rows = grid(4);
		for (DocketFacts.Sheet sheet : facts.sheets().subList(0, Math.min(MOST, facts.sheets().size()))) {
			cells(rows, Titles.joined(sheet.name(), sheet.stock()), figures.size(sheet.width(), sheet.height()),
					NLS.bind(Messages.DocketLines_used, sheet.parts(),
					Figures.number(sheet.utilisation() * PERCENT, 0)),
					Figures.time(sheet.seconds()));
		}
		more(facts.sheets().size());
		if (facts.seconds() > 0) {
			label(column, NLS.bind(Messages.DocketLines_time, Figures.time(facts.seconds())), null);
		}
	}

	private void signed(DocketFacts facts) {
		heading(Messages.DocketLines_signed);
		Composite rows = grid(2);
		for (DocketFacts.Signed each : facts.signed()) {
			String said = Titles.joined(each.day().map(Days::brief).orElse(""), each.who()); //$NON-NLS-1$
			row(rows, StageWords.of(each.stage()), said.isEmpty() ? Messages.DocketLines_notYet : said);
		}
	}

	private void history(Sight sight) {
		List<String> lines = new ArrayList<>();
		for (StageChange change : sight.history()) {
			lines.add(Titles.joined(
					NLS.bind(Messages.DocketLines_change, StageWords.of(change.getFrom()),
					StageWords.of(change.getTo())),
					change.getAt() == null ? "" : TIME.format(change.getAt().atZone(ZoneId.systemDefault())), //$NON-NLS-1$
					change.getWho(), change.getRemark()));
		}
		latest(Messages.DocketLines_history, lines);
	}

	private void papers(Sight sight) {
		List<String> lines = new ArrayList<>();
		for (Paper paper : sight.papers()) {
			lines.add(Titles.joined(PaperWords.of(paper.kind()), TIME.format(paper.at().atZone(ZoneId.systemDefault())),
					paper.person(), paper.remark()));
		}
		latest(Messages.DocketLines_papers, lines);
	}

	/** The latest first: that is what is asked for. */
	private void latest(String heading, List<String> lines) {
		List<String> reversed = new ArrayList<>(lines);
		Collections.reverse(reversed);
		texts(heading, reversed);
	}

	private void texts(String heading, List<String> texts) {
		if (!texts.isEmpty()) {
			heading(heading);
			texts.subList(0, Math.min(MOST, texts.size())).forEach(text -> label(column, text, null));
			more(texts.size());
		}
	}

	private void more(int all) {
		if (all > MOST) {
			label(column, NLS.bind(Messages.DocketLines_more, all - MOST), null);
		}
	}

	private void heading(String words) {
		Label heading = label(column, words, null);
		heading.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		GridDataFactory.fillDefaults().grab(true, false).indent(0, 8).applyTo(heading);
	}

	private Composite grid(int columns) {
		Composite grid = new Composite(column, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(columns).spacing(12, 2).applyTo(grid);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
		return grid;
	}

	private static void row(Composite rows, String name, String value) {
		Label label = new Label(rows, SWT.NONE);
		label.setText(name);
		GridDataFactory.fillDefaults().align(SWT.LEFT, SWT.TOP).applyTo(label);
		label(rows, value, null);
	}

	/** The first takes what room there is; the others end in line. */
	private static void cells(Composite rows, String... texts) {
		label(rows, texts[0], null);
		for (int i = 1; i < texts.length; i++) {
			Label cell = new Label(rows, SWT.RIGHT);
			cell.setText(texts[i]);
			GridDataFactory.fillDefaults().align(SWT.END, SWT.TOP).applyTo(cell);
		}
	}

	/** @param colour null for that of all words */
	private static Label label(Composite parent, String text, Color colour) {
		Label label = new Label(parent, SWT.WRAP);
		label.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		if (colour != null) {
			label.setForeground(colour);
		}
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(label);
		return label;
	}
}
