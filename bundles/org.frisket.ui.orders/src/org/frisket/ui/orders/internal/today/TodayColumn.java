package org.frisket.ui.orders.internal.today;

import java.text.NumberFormat;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.frisket.orders.Entry;
import org.frisket.orders.work.Picks;
import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.RunTime;
import org.frisket.orders.work.Today;
import org.frisket.orders.work.TodayLine;
import org.frisket.ui.orders.internal.Named;

/** What is to be printed, cut or finished: runs first, then jobs under the stock they need. */
final class TodayColumn {

	private static final int SPACE_PX = 4;
	private static final DateTimeFormatter DAY = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM);

	/** Who is told. */
	interface Client {

		/** Something was picked, or is not any more. */
		void picked();

		/** The cursor is elsewhere. */
		void moved(TodayColumn column);

		/** A run, or a job, was opened. */
		void opened();
	}

	private final String title;
	private final Picks picks;
	private final Client client;
	private final Label head;
	private final Tree tree;
	private final Swatches swatches;

	/** @param picks null where nothing is to be picked */
	TodayColumn(Composite parent, String title, Picks picks, Client client) {
		this.title = title;
		this.picks = picks;
		this.client = client;
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, SPACE_PX).applyTo(area);
		head = new Label(area, SWT.NONE);
		head.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		GridDataFactory.fillDefaults().grab(true, false).indent(2 * SPACE_PX, SPACE_PX).applyTo(head);
		tree = new Tree(area, SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL | (picks == null ? SWT.NONE
				: SWT.CHECK));
		GridDataFactory.fillDefaults().grab(true, true).applyTo(tree);
		swatches = new Swatches(tree);
		Named.as(head::getText, tree);
		tree.addListener(SWT.Selection, this::selected);
		tree.addListener(SWT.FocusIn, event -> client.moved(this));
		tree.addListener(SWT.DefaultSelection, event -> client.opened());
	}

	Tree tree() {
		return tree;
	}

	private void selected(Event event) {
		if (event.detail == SWT.CHECK) {
			TreeItem item = (TreeItem) event.item;
			boolean on = item.getChecked();
			if (item.getData() instanceof TodayLine line) {
				picks.pick(line, on);
			} else {
				for (TreeItem child : item.getItems()) {
					if (child.getData() instanceof TodayLine line) {
						picks.pick(line, on);
					}
				}
			}
			client.picked();
		} else {
			client.moved(this);
		}
	}

	/** @param groups of jobs, or a single one whose name is not shown */
	void show(TodayRead read, List<PlannedRun> runs, List<Today.Group> groups, List<TodayLine> lines) {
		Object before = key(tree.getSelectionCount() == 0 ? null : tree.getSelection()[0].getData());
		tree.setRedraw(false);
		tree.removeAll();
		int count = lines.size() + groups.stream().mapToInt(group -> group.lines().size()).sum();
		head.setText(NLS.bind(Messages.TodayColumn_head, title, NumberFormat.getIntegerInstance().format(count)));
		runs.forEach(run -> item(new TreeItem(tree, SWT.NONE), run, words(run)));
		for (Today.Group group : groups) {
			TreeItem parent = new TreeItem(tree, SWT.NONE);
			item(parent, group.of(), NLS.bind(Messages.TodayColumn_group, read.name(group.of()), group.missing()));
			parent.setImage(swatches.of(group.of().colour()));
			parent.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
			group.lines().forEach(line -> item(new TreeItem(parent, SWT.NONE), line, words(line, read.today(), true)));
			parent.setExpanded(true);
		}
		lines.forEach(line -> item(new TreeItem(tree, SWT.NONE), line, words(line, read.today(), false)));
		check();
		tree.setRedraw(true);
		TreeItem again = all().stream().filter(item -> before != null && before.equals(key(item.getData()))).findFirst()
				.orElse(tree.getItemCount() == 0 ? null : tree.getItem(0));
		if (again != null) {
			tree.setSelection(again);
		}
	}

	private static void item(TreeItem item, Object data, String text) {
		item.setData(data);
		item.setText(text);
	}

	/** What stays the same when the list is read again. */
	private static Object key(Object data) {
		if (data instanceof TodayLine line) {
			return List.of(line.entry().number(), line.of());
		}
		return data instanceof PlannedRun run ? run.number() : data;
	}

	/** Shows what is picked. */
	void check() {
		if (picks == null) {
			return;
		}
		for (TreeItem item : all()) {
			if (item.getData() instanceof TodayLine line) {
				item.setChecked(picks.has(line));
			} else {
				long picked = List.of(item.getItems()).stream()
						.filter(child -> child.getData() instanceof TodayLine line
						&& picks.has(line)).count();
				item.setChecked(picked > 0);
				item.setGrayed(picked > 0 && picked < item.getItemCount());
			}
		}
	}

	List<TreeItem> all() {
		return List.of(tree.getItems()).stream()
				.flatMap(item -> Stream.concat(Stream.of(item), List.of(item.getItems()).stream()))
				.toList();
	}

	private static String words(PlannedRun run) {
		return NLS.bind(Messages.TodayColumn_run, new Object[] { run.number(),
				String.join(", ", run.numbers().stream().map(String::valueOf).toList()), run.sheets().size(),
				RunTime.text(run.seconds()) });
	}

	private static String words(TodayLine line, Today today, boolean pieces) {
		Entry entry = line.entry();
		String who = entry.customer().isEmpty() ? entry.title()
				: NLS.bind(Messages.TodayColumn_for, entry.title(), entry.customer());
		String due = entry.due().map(DAY::format).map(day -> today.presses(entry)
				? NLS.bind(Messages.TodayColumn_presses, day) : day)
				.orElse(Messages.TodayColumn_noDay);
		if (!pieces) {
			return NLS.bind(Messages.TodayColumn_finish, new Object[] { entry.number(), who, entry.quantity(), due });
		}
		String missing = NLS.bind(Messages.TodayColumn_missing, line.missing(), line.ordered());
		return NLS.bind(Messages.TodayColumn_line, new Object[] { entry.number(), who,
				line.coming() > 0 ? NLS.bind(Messages.TodayColumn_coming, missing, line.coming()) : missing, due });
	}

	/** The job under the cursor. */
	Optional<Entry> entry() {
		return selection() instanceof TodayLine line ? Optional.of(line.entry()) : Optional.empty();
	}

	/** The run under the cursor. */
	Optional<PlannedRun> run() {
		return selection() instanceof PlannedRun run ? Optional.of(run) : Optional.empty();
	}

	private Object selection() {
		return tree.getSelectionCount() == 0 ? null : tree.getSelection()[0].getData();
	}
}
