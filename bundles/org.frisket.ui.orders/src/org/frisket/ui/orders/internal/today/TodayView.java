package org.frisket.ui.orders.internal.today;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;
import org.frisket.orders.work.Picks;
import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.Step;
import org.frisket.orders.work.Today;
import org.frisket.orders.work.TodayList;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.EntrySelection;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreJob;

/**
 * What is to be printed, cut and finished today; what is picked is laid together, and a run that is done is said to be.
 */
public final class TodayView extends ViewPart {

	private static final String CONTEXT_ID = "org.frisket.ui.orders.today.context"; //$NON-NLS-1$
	private static final int SPACE_PX = 4;
	private static final int EMPTY_PX = 420;

	private final Runnable changed = this::read;
	private final Picks picks = new Picks();
	private final EntrySelection selection = new EntrySelection();
	private final TodayActions actions = new TodayActions(this);
	private final SheetCount count = new SheetCount(this::counted);
	private TodayList list;
	private Path folder;
	private boolean reading;
	private boolean again;
	private TodayRead shown;
	private Composite pages;
	private SashForm columns;
	private Composite empty;
	private Label notice;
	private Label foot;
	private Label caution;
	private TodayColumn print;
	private TodayColumn cut;
	private TodayColumn finish;
	private TodayColumn last;
	private Action undo;
	/** What came of what was done last, until something else is. */
	private String told = ""; //$NON-NLS-1$

	@Override
	public void createPartControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, SPACE_PX).applyTo(area);
		notice = line(area);
		pages = new Composite(area, SWT.NONE);
		pages.setLayout(new StackLayout());
		GridDataFactory.fillDefaults().grab(true, true).applyTo(pages);
		columns = new SashForm(pages, SWT.HORIZONTAL);
		Client client = new Client();
		print = new TodayColumn(columns, Messages.TodayView_print, picks, client);
		cut = new TodayColumn(columns, Messages.TodayView_cut, picks, client);
		finish = new TodayColumn(columns, Messages.TodayView_finish, null, client);
		columns.setWeights(2, 3, 2);
		last = cut;
		empty = empty();
		foot = line(area);
		caution = line(area);
		getSite().setSelectionProvider(selection);
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		undo = new Action() {
			@Override
			public void run() {
				actions.takeBackLast();
			}
		};
		undo.setEnabled(false);
		undo.setActionDefinitionId(ActionFactory.UNDO.getCommandId());
		getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.UNDO.getId(), undo);
		getViewSite().getActionBars().updateActionBars();
		OrderDesk.get().addListener(changed);
		read();
	}

	private static Label line(Composite area) {
		Label line = new Label(area, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).indent(2 * SPACE_PX, 0).exclude(true).applyTo(line);
		line.setVisible(false);
		return line;
	}

	private Composite empty() {
		Composite page = new Composite(pages, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(3 * SPACE_PX, 3 * SPACE_PX).applyTo(page);
		Label words = new Label(page, SWT.WRAP);
		words.setText(Messages.TodayView_empty);
		GridDataFactory.fillDefaults().hint(EMPTY_PX, SWT.DEFAULT).applyTo(words);
		return page;
	}

	private final class Client implements TodayColumn.Client {

		@Override
		public void picked() {
			told = ""; //$NON-NLS-1$
			showPicks(false);
		}

		@Override
		public void moved(TodayColumn column) {
			last = column;
			selection.selectOne(column.entry().orElse(null));
		}

		@Override
		public void opened() {
			actions.open();
		}
	}

	/** Looks again what is to be done; once more if it is asked meanwhile. */
	void read() {
		if (reading) {
			again = true;
			return;
		}
		reading = true;
		if (list == null || !Studio.folder().path().equals(folder)) {
			folder = Studio.folder().path();
			list = new TodayList(Studio.folder());
		}
		TodayList now = list;
		StoreJob<TodayRead> job = new StoreJob<>(Messages.TodayView_reading,
				() -> TodayRead.of(Studio.folder(), now, LocalDate.now()), this::show, this::refused);
		job.setSystem(true);
		job.schedule();
	}

	private void show(TodayRead read) {
		reading = false;
		if (pages.isDisposed()) {
			return;
		}
		shown = read;
		Today today = read.today();
		picks.show(today);
		print.show(read, runs(today, Step.PRINT), today.print(), List.of());
		cut.show(read, runs(today, Step.CUT), today.cut(), List.of());
		finish.show(read, List.of(), List.of(), today.finish());
		StackLayout layout = (StackLayout) pages.getLayout();
		layout.topControl = today.isEmpty() ? empty : columns;
		pages.layout();
		say(caution, today.cut().isEmpty() && today.runs().isEmpty() ? "" //$NON-NLS-1$
				: read.cautions().stream().findFirst().orElse("")); //$NON-NLS-1$
		caution.setToolTipText(String.join("\n", read.cautions())); //$NON-NLS-1$
		say(notice, Stream.concat(Stream.of(told), today.problems().stream()).filter(text -> !text.isEmpty())
				.collect(Collectors.joining("\n"))); //$NON-NLS-1$
		selection.selectOne(last.entry().orElse(null));
		showPicks(true);
		if (again) {
			again = false;
			read();
		}
	}

	private static List<PlannedRun> runs(Today today, Step step) {
		return today.runs().stream().filter(run -> run.next().filter(next -> next == step).isPresent()).toList();
	}

	private void refused(String why) {
		reading = false;
		if (!pages.isDisposed()) {
			say(notice, why);
		}
	}

	private void showPicks(boolean anew) {
		print.check();
		cut.check();
		foot(picks.numbers().isEmpty() ? Messages.TodayView_pick
				: NLS.bind(Messages.TodayView_picked, picks.numbers().size(), picks.pieces()));
		count.ask(picks.numbers(), anew);
	}

	private void counted(List<Long> numbers, String sheets) {
		if (!pages.isDisposed() && numbers.equals(picks.numbers())) {
			foot(NLS.bind(Messages.TodayView_pickedSheets, new Object[] { numbers.size(), picks.pieces(), sheets }));
		}
	}

	private void foot(String text) {
		say(foot, shown == null || shown.today().isEmpty() ? "" : text); //$NON-NLS-1$
	}

	/** Says something above the lists, until they are read again. */
	void say(String text) {
		if (!pages.isDisposed()) {
			say(notice, text);
		}
	}

	private static void say(Label line, String text) {
		line.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		boolean there = !text.isEmpty();
		((GridData) line.getLayoutData()).exclude = !there;
		line.setVisible(there);
		line.getParent().layout();
	}

	/** Says what came of something; it stays when the lists are read for it. */
	void tell(String text) {
		told = text;
		say(text);
	}

	void setUndoable(boolean possible) {
		undo.setEnabled(possible);
	}

	TodayActions actions() {
		return actions;
	}

	/** What was read last; null before. */
	TodayRead shown() {
		return shown;
	}

	public Picks picks() {
		return picks;
	}

	/** The run under the cursor, else the only one there is. */
	Optional<PlannedRun> run() {
		List<PlannedRun> runs = shown == null ? List.of() : shown.today().runs();
		return last.run().or(() -> Stream.of(print, cut).flatMap(column -> column.run().stream()).findFirst())
				.or(() -> runs.size() == 1 ? Optional.of(runs.get(0)) : Optional.empty());
	}

	Optional<Long> job() {
		return last.entry().map(entry -> entry.number());
	}

	public Tree cutTree() {
		return cut.tree();
	}

	public Tree finishTree() {
		return finish.tree();
	}

	/** What is said at the foot. */
	public String footText() {
		return foot.getText();
	}

	public String cautionText() {
		return caution.getText();
	}

	@Override
	public void setFocus() {
		if (shown != null && shown.today().isEmpty()) {
			empty.setFocus();
		} else {
			last.tree().setFocus();
		}
	}

	@Override
	public void dispose() {
		OrderDesk.get().removeListener(changed);
		count.stop();
		super.dispose();
	}
}
