package org.frisket.ui.views.internal.repairs;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.keys.IBindingService;
import org.frisket.editing.Edit;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.prepare.repair.RepairPlan;
import org.frisket.ui.Icon;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.internal.looks.HeldKey;
import org.frisket.ui.views.internal.BenchView;
import org.frisket.ui.views.internal.TextKeys;

/**
 * What steps of repair would do to the outlines of the job in front: every repair is a line, going to a line shows its
 * place, and the bench shows the job as it would be until the repairs are applied or given up. It is worked out again
 * whenever the steps, their options or the job change.
 */
public final class RepairsView extends BenchView implements PlanJob.Client {

	private static final String CONTEXT_ID = "org.frisket.ui.views.repairs.context"; //$NON-NLS-1$
	private static final String OPEN_COMMAND_ID = "org.frisket.ui.views.command.repairs"; //$NON-NLS-1$
	private static final int MARGIN_PX = 4;
	private static final int[] WEIGHTS = { 45, 55 };
	/** A number that is typed is not taken digit by digit. */
	private static final int PAUSE_MS = 200;

	private LocalResourceManager images;
	private StepsPanel steps;
	private RepairList list;
	private RepairsBar bar;
	private HeldKey compareKey;
	private PlanJob planner;
	/** The bench whose outlines are looked at; null if none are. */
	private JobOnBench subject;
	/** Which of them. */
	private RepairScope scope;
	/** What was worked out last; null while that is under way, or if there is nothing to work out. */
	private RepairPlan plan;

	@Override
	protected Control createContent(Composite parent) {
		Composite content = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).spacing(0, MARGIN_PX).applyTo(content);
		images = new LocalResourceManager(JFaceResources.getResources(), content);
		bar = new RepairsBar(content, this);
		SashForm columns = new SashForm(content, SWT.HORIZONTAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(columns);
		steps = new StepsPanel(columns, new TextKeys(getSite()), this::replan);
		Composite frame = new Composite(columns, SWT.NONE);
		list = new RepairList(frame, this::visit, this::lookClosely);
		columns.setWeights(WEIGHTS);
		bar.fill(steps);
		compareKey = new HeldKey(list.table(), this::toggle);
		planner = new PlanJob(parent.getDisplay(), this);
		setTitleImage(images.create(Icon.REPAIRS.descriptor()));
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		return content;
	}

	/** Looks at the outlines that are selected now, or at all of them if nothing is. */
	void begin() {
		drop();
		subject = bench();
		if (subject == null) {
			idle(Messages.RepairsView_noBench);
			return;
		}
		scope = RepairScope.of(subject);
		replan();
		setFocus();
	}

	/** Works it out again, after a moment. */
	private void replan() {
		if (subject == null) {
			return;
		}
		plan = null;
		List<Outline> outlines = scope.outlines();
		if (outlines.isEmpty()) {
			subject.preview().hide();
			idle(scope.why());
			return;
		}
		showContent();
		if (!steps.validate()) {
			planner.request(null, 0);
			subject.preview().hide();
			list.show(List.of());
			say(Messages.RepairsView_correct);
			return;
		}
		say(NLS.bind(Messages.RepairsView_working, 0));
		planner.request(new PlanJob.Request(EcoreUtil.copy(subject.job()), outlines.stream().map(Outline::getId).toList(),
				steps.choices(), steps.tolerance()), PAUSE_MS);
	}

	@Override
	public void working(int percent) {
		say(NLS.bind(Messages.RepairsView_working, percent));
	}

	@Override
	public void planned(RepairPlan made, Job tried) {
		if (subject == null || bar.isDisposed()) {
			return;
		}
		plan = made;
		list.show(RepairLine.of(plan, subject.job()));
		if (plan.isEmpty()) {
			subject.preview().hide();
		} else {
			subject.preview().show(tried);
		}
		if (list.selected() == null) {
			subject.preview().unmark();
		} else {
			visit(list.selected());
		}
		summarize();
	}

	private void summarize() {
		String outlines = scope.text();
		int count = plan.repairs().size();
		if (count == 0) {
			say(NLS.bind(Messages.RepairsView_nothing, outlines));
		} else {
			say(NLS.bind(count == 1 ? Messages.RepairsView_oneRepair : Messages.RepairsView_repairs,
					new Object[] { count, outlines, plan.proof(AmountText::length) }));
		}
	}

	@Override
	public void failed(String message) {
		if (subject != null && !bar.isDisposed()) {
			subject.preview().hide();
			list.show(List.of());
			say(message);
		}
	}

	private void say(String text) {
		bar.say(text, plan != null && !plan.isEmpty());
		showCompare();
		int count = plan == null ? 0 : plan.repairs().size();
		setPartName(count == 0 ? Messages.RepairsView_title : NLS.bind(Messages.RepairsView_titleCount, count));
	}

	private void showCompare() {
		boolean there = subject != null && subject.preview().isThere();
		bar.showCompare(there, there && !subject.preview().isAfter());
	}

	@Override
	public void previewChanged() {
		if (!bar.isDisposed()) {
			showCompare();
		}
	}

	private void visit(RepairLine line) {
		if (line.place() == null) {
			subject.preview().unmark();
			Jobs.element(subject.job(), line.element()).ifPresent(element -> subject.select(List.of(element)));
		} else {
			subject.preview().mark(line.place(), line.number(), line.text());
		}
	}

	private void lookClosely(RepairLine line) {
		visit(line);
		if (line.place() != null) {
			subject.preview().lookClosely(line.place());
		}
	}

	/** Visits the next repair, or the one before. */
	void step(int by) {
		RepairLine line = subject == null ? null : list.step(by);
		if (line != null) {
			visit(line);
		}
	}

	/** Before and after; only for as long as a key is held, if it is held. */
	void compare(Event trigger) {
		compareKey.press(trigger);
	}

	/** Before and after in turn. */
	void toggle() {
		if (subject != null) {
			subject.preview().toggle();
			showCompare();
		}
	}

	/** Makes the repairs, which is one step of undo; nothing happens while they are not known. */
	void apply() {
		if (subject == null || plan == null) {
			return;
		}
		Optional<Edit> edit = plan.edit(subject.job());
		if (edit.isPresent()) {
			JobOnBench bench = subject;
			int count = plan.repairs().size();
			drop();
			bench.edits().execute(edit.get());
			idle(count == 1 ? Messages.RepairsView_doneOne : NLS.bind(Messages.RepairsView_done, count));
		}
	}

	/** Leaves everything as it is. */
	void cancel() {
		drop();
		IWorkbenchPage page = getSite().getPage();
		if (page.getActiveEditor() != null) {
			// or the view that comes to the front would have the focus, and select something
			page.activate(page.getActiveEditor());
		}
		page.hideView(this);
	}

	/** Nothing is looked at any more. */
	private void drop() {
		giveUp();
		if (list.table().isDisposed()) {
			return;
		}
		list.show(List.of());
		say(""); //$NON-NLS-1$
	}

	private void giveUp() {
		planner.request(null, 0);
		JobOnBench former = subject;
		subject = null;
		plan = null;
		if (former != null) {
			former.preview().hide();
		}
	}

	private void idle(String note) {
		drop();
		if (!list.table().isDisposed()) {
			showNote(note);
		}
	}

	@Override
	protected void benchChanged() {
		if (bench() == null) {
			idle(Messages.RepairsView_noBench);
		} else if (bench() != subject) {
			String key = PlatformUI.getWorkbench().getService(IBindingService.class)
					.getBestActiveBindingFormattedFor(OPEN_COMMAND_ID);
			idle(key == null ? Messages.RepairsView_idle : NLS.bind(Messages.RepairsView_idleKey, key));
		}
	}

	@Override
	public void jobChanged() {
		replan();
	}

	@Override
	public void pictureChanged() {
		if (plan != null) {
			// the unit of the studio may be another
			list.show(RepairLine.of(plan, subject.job()));
			summarize();
		}
	}

	/** The list of repairs. */
	public Table table() {
		return list.table();
	}

	/** The list of steps. */
	public Table steps() {
		return steps.list();
	}

	/** What is said above the list. */
	public String summary() {
		return bar.text();
	}

	/** Whether it is known what would be repaired. */
	public boolean isPlanned() {
		return plan != null;
	}

	@Override
	public void setFocus() {
		if (note().isEmpty()) {
			list.table().setFocus();
		} else {
			super.setFocus();
		}
	}

	@Override
	public void dispose() {
		if (planner != null) {
			giveUp();
		}
		super.dispose();
	}
}
