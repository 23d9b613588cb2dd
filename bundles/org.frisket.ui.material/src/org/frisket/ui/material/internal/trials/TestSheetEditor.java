package org.frisket.ui.material.internal.trials;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.commands.operations.ObjectUndoContext;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;
import org.eclipse.ui.statushandlers.StatusManager;
import org.frisket.material.advice.RulesOfThumb;
import org.frisket.material.advice.SettingsAdvisor;
import org.frisket.material.advice.Work;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SheetPlan;
import org.frisket.material.tools.Problem;
import org.frisket.material.trials.Reorder;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.TestSheet;
import org.frisket.material.trials.TestSheetJob;
import org.frisket.material.trials.Verdict;
import org.frisket.ui.material.Material;
import org.frisket.ui.material.internal.machines.JobOpener;
import org.frisket.ui.material.internal.machines.StudioDesk;
import org.frisket.ui.material.internal.machines.UndoKeys;

/**
 * The page of a test sheet. While it is only planned, its picture follows the form; once its job is opened it is one of the
 * studio's, its cells are judged, and Save keeps the verdicts.
 */
public final class TestSheetEditor extends EditorPart implements StudioDesk.Listener, TestSheetPage.Client {

	public static final String ID = Material.TEST_SHEET_ID;

	private final IUndoContext context = new ObjectUndoContext(this);
	private final SheetModel model = new SheetModel(this::sheetChanged);
	private final SheetKeeper keeper = new SheetKeeper(this::say);
	private UndoKeys undo;
	private VerdictKeys keys;
	private TestSheetPage page;
	private Advising advising;
	private Advising.Answer answer;
	/** Whether the sweeps are still those that were proposed. */
	private boolean untouched = true;
	private boolean dirty;

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		if (!(input instanceof TestSheetInput)) {
			throw new PartInitException(NLS.bind(Messages.TestSheetEditor_wrongInput, input.getName()));
		}
		setSite(site);
		setInput(input);
		setPartName(input.getName());
	}

	@Override
	public void createPartControl(Composite parent) {
		undo = new UndoKeys(getSite(), context);
		keys = new VerdictKeys(getSite());
		advising = new Advising(parent.getDisplay(), this::advised);
		page = new TestSheetPage(parent, model, this);
		StudioDesk.get().addListener(this);
		deskChanged();
		StudioDesk.get().refresh();
	}

	private String id() {
		return ((TestSheetInput) getEditorInput()).id();
	}

	private static DeskState state() {
		return StudioDesk.get().state();
	}

	@Override
	public void deskChanged() {
		page.form().show(state());
		if (id().isEmpty()) {
			workChanged();
			return;
		}
		Optional<TestSheet> stored = state().sheets().stream().filter(sheet -> sheet.id().equals(id())).findFirst();
		if (stored.isPresent() && !model.isDirty()) {
			openSheet(stored.get());
		} else if (model.sheet() != null && model.isOpen()) {
			page.form().fix(model.sheet());
			ask();
		} else if (StudioDesk.get().isKnown()) {
			say(NLS.bind(Messages.TestSheetEditor_gone, id()));
		}
	}

	private void openSheet(TestSheet sheet) {
		page.form().fix(sheet);
		model.open(sheet, page.form().work().machine(), page.form().size());
		ask();
	}

	@Override
	public void workChanged() {
		planned();
		ask();
	}

	@Override
	public void valueChanged() {
		untouched = false;
		planned();
	}

	@Override
	public Settings advisedSettings() {
		Work work = page.form().work();
		if (answer != null && answer.work().equals(work)) {
			return answer.advice().settings();
		}
		// until the answer comes, what would be said without trials
		return new SettingsAdvisor(List.of(), RulesOfThumb.of(state().rules())).advise(work).settings();
	}

	private void planned() {
		if (!id().isEmpty()) {
			if (model.isOpen()) {
				model.open(model.sheet(), model.machine(), page.form().size());
			}
			return;
		}
		SheetPlan plan = page.form().plan(advisedSettings());
		List<Problem> problems = plan.problems();
		page.form().say(problems);
		if (problems.isEmpty()) {
			model.plan(plan.sheet(Messages.TestSheetEditor_planned, LocalDate.now()), plan.work().machine(), plan.sizeMm());
		}
		page.setCanOpen(problems.isEmpty() && StudioDesk.get().canKeep());
	}

	private void ask() {
		advising.ask(state(), model.isOpen() ? workOfSheet() : page.form().work(), model.isOpen() ? model.sheet() : null);
		page.earlier(state(), page.form().work().stock().stock());
	}

	/** With the stock as it was when the sheet was made. */
	private Work workOfSheet() {
		Work shown = page.form().work();
		return new Work(model.sheet().stock(), shown.machine(), shown.tool(), shown.operation());
	}

	private void advised(Advising.Answer news) {
		answer = news;
		if (id().isEmpty() && untouched) {
			page.form().propose();
			planned();
		}
		Optional<Reorder> before = Reorder.of(state().runs(), FrontJob.id(getSite().getPage()),
				news.work().stock().stock(), news.work().setup());
		page.advise(news, model.isOpen() ? model.sheet() : null, before);
	}

	private void sheetChanged() {
		page.sheetChanged();
		boolean now = model.isDirty();
		if (now != dirty) {
			dirty = now;
			firePropertyChange(PROP_DIRTY);
		}
	}

	@Override
	public void judge(Optional<Verdict> verdict) {
		if (model.isOpen() && StudioDesk.get().canKeep()) {
			MarkVerdict mark = new MarkVerdict(model, context, model.at(), verdict) {
				@Override
				protected void judged() {
					ask();
				}
			};
			if (mark.isNews()) {
				undo.execute(mark);
			}
		}
	}

	@Override
	public void listens(boolean now) {
		keys.listen(now);
	}

	@Override
	public void openAsJob() {
		try {
			if (model.isOpen()) {
				JobOpener.open(getSite().getPage(), TestSheetJob.of(model.sheet(), model.machine(), page.form().size()));
			} else {
				SheetPlan plan = page.form().plan(advisedSettings());
				keeper.make(plan, sheet -> made(plan, sheet));
			}
		} catch (IllegalArgumentException e) {
			say(e.getMessage());
		}
	}

	private void made(SheetPlan plan, TestSheet sheet) {
		TestSheetInput input = new TestSheetInput(sheet.id());
		setInputWithNotify(input);
		setPartName(input.getName());
		openSheet(sheet);
		JobOpener.open(getSite().getPage(), plan.job(sheet));
	}

	@Override
	public void open(TestSheetInput input) {
		try {
			getSite().getPage().openEditor(input, ID);
		} catch (PartInitException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
		}
	}

	@Override
	public void saveChart() {
		if (model.sheet() != null) {
			ChartFile.ask(getSite().getShell(), model.sheet(), model.machine(), this::tell);
		}
	}

	private void tell(String message) {
		getEditorSite().getActionBars().getStatusLineManager().setMessage(message);
	}

	private void say(String message) {
		getEditorSite().getActionBars().getStatusLineManager().setErrorMessage(message);
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		TestSheet sheet = model.sheet();
		keeper.save(sheet, () -> {
			if (model.sheet() == sheet) {
				model.kept();
			}
		}, () -> monitor.setCanceled(true));
	}

	/** The parts of the page. */
	public TestSheetPage page() {
		return page;
	}

	/** The sheet as it is shown now. */
	public TestSheet sheet() {
		return model.sheet();
	}

	/** Whether nothing is being read, kept or worked out. */
	public boolean isQuiet() {
		return StudioDesk.get().isQuiet() && advising.isQuiet();
	}

	@Override
	public boolean isDirty() {
		return dirty;
	}

	@Override
	public void setFocus() {
		page.setFocus(model.isOpen());
	}

	@Override
	public void dispose() {
		StudioDesk.get().removeListener(this);
		if (page != null) {
			advising.stop();
			undo.dispose();
		}
		super.dispose();
	}

	@Override
	public boolean isSaveAsAllowed() {
		return false;
	}

	@Override
	public void doSaveAs() {
		// a sheet is a fact of one day
	}
}
