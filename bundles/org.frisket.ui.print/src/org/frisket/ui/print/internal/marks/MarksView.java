package org.frisket.ui.print.internal.marks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.contexts.IContextService;
import org.frisket.model.Job;
import org.frisket.model.MeasuredMark;
import org.frisket.model.Sheet;
import org.frisket.print.output.SheetParts;
import org.frisket.print.output.TurnEdge;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.RegisterFinding;
import org.frisket.sheets.SheetName;
import org.frisket.ui.Icon;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.print.internal.profiles.StudioPrinters;
import org.frisket.ui.views.internal.BenchView;
import org.frisket.ui.views.internal.TextKeys;

/**
 * The register marks of a sheet of the job in front: placed, measured by hand or in a scan, and what the measures say of how
 * the print lies. Every change is a step of undo of the job.
 */
public final class MarksView extends BenchView {

	public static final String ID = "org.frisket.ui.print.marks"; //$NON-NLS-1$
	private static final String CONTEXT_ID = "org.frisket.ui.print.marks.context"; //$NON-NLS-1$

	private MarksDesk desk;
	private MarksPage page;
	private ReadParts reader;
	private ScanDesk scan;
	private List<SheetParts> parts = List.of();
	private boolean read;
	/** The job whose sheets are shown; null if none are. */
	private Job shown;
	/** Of the sheet that was chosen last. */
	private String chosen = ""; //$NON-NLS-1$
	/** Whether the back of a sheet is shown, if it has one. */
	private boolean back;
	/** How sheets are turned over in this studio. */
	private TurnEdge turn = TurnEdge.SIDE;
	/** Of that sheet; null if there is none. */
	private SheetState state;
	private String problem = ""; //$NON-NLS-1$

	@Override
	protected Control createContent(Composite parent) {
		MarksActions actions = new MarksActions(this);
		desk = new MarksDesk(this, actions);
		page = new MarksPage(parent, new TextKeys(getSite()), desk);
		reader = new ReadParts(parent.getDisplay(), this::read);
		scan = new ScanDesk(this, actions, page);
		ScanDrop.onto(page, () -> state != null && state.plan().isPresent(), this::loadScan);
		// of the site: it holds while the view is active
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		readPrinters();
		return page;
	}

	/** Has the studio's printers offered as they are now. */
	void readPrinters() {
		StudioPrinters.read(page.getDisplay(), profiles -> {
			if (!page.isDisposed()) {
				page.fit().offer(profiles.stream().map(PrinterProfile::name).toList());
				refresh();
			}
		}, this::say);
		StudioPrinters.readTurn(page.getDisplay(), edge -> {
			turn = edge;
			if (!page.isDisposed()) {
				refresh();
			}
		}, this::say);
	}

	@Override
	protected void benchChanged() {
		parts = List.of();
		read = false;
		scan.forget();
		shown = bench() == null ? null : bench().job();
		if (shown == null) {
			reader.giveUp();
			state = null;
			showNote(Messages.MarksView_noBench);
			return;
		}
		pictureChanged();
	}

	@Override
	public void jobChanged() {
		if (bench().job() != shown) {
			benchChanged();
		} else {
			refresh();
		}
	}

	@Override
	public void pictureChanged() {
		if (bench() != null && bench().prepared().isPresent()) {
			reader.request(shown, bench().prepared().get(), Bench.fileOf(bench()));
		}
		refresh();
	}

	private void read(List<SheetParts> newest) {
		if (!page.isDisposed()) {
			parts = newest;
			read = true;
			refresh();
		}
	}

	/** All that is shown follows the job. */
	void refresh() {
		if (shown == null) {
			return;
		}
		List<Sheet> sheets = shown.getSheets();
		if (sheets.isEmpty()) {
			state = null;
			showNote(Messages.MarksView_noSheet);
			return;
		}
		int index = Math.max(0, sheets.stream().map(Sheet::getId).toList().indexOf(chosen));
		Sheet sheet = sheets.get(index);
		if (state != null && state.sheet() != sheet) {
			scan.forget();
		}
		SheetParts all = partsOf(sheet);
		// a back that was measured can be seen while nothing of it is known yet
		boolean twoSided = all.twoSided() || sheet.getMeasured().stream().anyMatch(MeasuredMark::isBack);
		state = back && twoSided ? SheetState.ofBack(sheet, all, turn) : front(sheet);
		ScanNews news = scan.news();
		showContent();
		page.showSide(twoSided, state.back());
		page.showSheets(sheets.stream().map(SheetName::of).toList(), index);
		page.show(state, SheetName.of(sheet), notices(news), words(news));
	}

	private SheetParts partsOf(Sheet sheet) {
		int index = shown.getSheets().indexOf(sheet);
		return index >= 0 && index < parts.size() ? parts.get(index) : SheetParts.NONE;
	}

	/** A sheet as marks are placed on it. */
	SheetState front(Sheet sheet) {
		return SheetState.of(sheet, partsOf(sheet));
	}

	private List<Notices.Notice> notices(ScanNews news) {
		List<Notices.Notice> notices = new ArrayList<>();
		if (!problem.isEmpty()) {
			notices.add(new Notices.Notice(Icon.BLOCKING, problem));
		}
		for (RegisterFinding finding : news.findings()) {
			notices.add(Notices.Notice.of(finding, false));
		}
		for (RegisterFinding finding : state.findings()) {
			notices.add(Notices.Notice.of(finding, state.checks().contains(finding)));
		}
		state.measured().map(FitWords::caution).filter(words -> !words.isEmpty())
				.ifPresent(words -> notices.add(new Notices.Notice(Icon.CAUTION, words)));
		return notices;
	}

	private String words(ScanNews news) {
		if (!state.trouble().isEmpty()) {
			return state.trouble();
		}
		return state.plan().isEmpty() ? Messages.MarksView_noMarks : news.words();
	}

	/** Shows another sheet. @param index from 0 */
	void show(int index) {
		if (index >= 0 && index < shown.getSheets().size()) {
			scan.stop();
			problem = ""; //$NON-NLS-1$
			chosen = shown.getSheets().get(index).getId();
			page.canvas().light();
			refresh();
		}
	}

	/** Shows the back of the sheet, or its front again. */
	void showSide(boolean now) {
		if (back != now) {
			scan.forget();
			problem = ""; //$NON-NLS-1$
			back = now;
			page.canvas().light();
			refresh();
		}
	}

	/** Looks for the marks in a scan or a photograph. */
	public void loadScan(Path file) {
		scan.load(file);
	}

	/** Says why something was not done, until something else is; empty for nothing. */
	void say(String words) {
		if (!page.isDisposed() && !problem.equals(words)) {
			problem = words;
			refresh();
		}
	}

	/** What was said is done with. */
	void unsay() {
		problem = ""; //$NON-NLS-1$
	}

	/** What can be done here. */
	MarksDesk desk() {
		return desk;
	}

	ScanDesk scan() {
		return scan;
	}

	/** The job on the bench in front; null if there is none. */
	JobOnBench front() {
		return bench();
	}

	SheetState state() {
		return state;
	}

	boolean hasSheet() {
		return state != null;
	}

	/** Whether what is seen is that of the job as it is now, and no scan is looked through. */
	public boolean isSettled() {
		return bench() != null && bench().isUpToDate() && read && reader.getState() == org.eclipse.core.runtime.jobs.Job.NONE
				&& !scan.isUnderWay();
	}

	/** What is seen, for who looks at it. */
	public MarksPage page() {
		return page;
	}

	@Override
	public void setFocus() {
		if (note().isEmpty()) {
			page.setFocus();
		} else {
			super.setFocus();
		}
	}

	@Override
	public void dispose() {
		if (reader != null) {
			reader.giveUp();
			scan.stop();
		}
		super.dispose();
	}
}
