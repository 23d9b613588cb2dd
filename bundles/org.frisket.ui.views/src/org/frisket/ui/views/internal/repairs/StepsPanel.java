package org.frisket.ui.views.internal.repairs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.RepairStep;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.repair.RepairSteps;
import org.frisket.prepare.repair.StepChoice;
import org.frisket.ui.bench.internal.options.OptionForm;
import org.frisket.ui.bench.internal.options.OptionMemory;
import org.frisket.ui.views.internal.TextKeys;
import org.osgi.service.prefs.BackingStoreException;

/**
 * Which steps are taken and how: a list to tick, the options of the step that is gone to, and the tolerance of all. It
 * begins with the recommended course, and what is set holds as long as it is there.
 */
final class StepsPanel extends Composite {

	private static final String NODE = "org.frisket.ui.views"; //$NON-NLS-1$
	private static final String OPTIONS = "repairs"; //$NON-NLS-1$
	private static final String COURSE = "course"; //$NON-NLS-1$
	private static final int SPACING_PX = 8;
	private static final int LIST_PX = 240;
	/** From a thousandth of a millimetre to what is plainly seen. */
	private static final Option TOLERANCE = Option.length("tolerance", Messages.StepsPanel_tolerance, //$NON-NLS-1$
			Tolerance.DEFAULT.mm() + "mm", 0.001, 1); //$NON-NLS-1$

	private final List<Contribution<RepairStep>> steps = RepairSteps.all();
	private final OptionMemory memory = new OptionMemory(InstanceScope.INSTANCE.getNode(NODE).node(OPTIONS));
	private final TextKeys keys;
	private final Runnable changed;
	private final Table list;
	private final ScrolledComposite room;
	private final Composite forms;
	private final Label about;
	private final OptionForm course;
	private final OptionForm options;
	/** Texts of the options of steps, by the id of the step. */
	private final Map<String, Map<String, String>> set = new LinkedHashMap<>();
	private Contribution<RepairStep> shown;

	/**
	 * @param keys    for the texts that are typed here
	 * @param changed told whenever other steps are taken, or in another way
	 */
	StepsPanel(Composite parent, TextKeys keys, Runnable changed) {
		super(parent, SWT.NONE);
		this.keys = keys;
		this.changed = changed;
		forget();
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACING_PX, SPACING_PX).applyTo(this);
		list = new Table(this, SWT.CHECK | SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER);
		GridDataFactory.fillDefaults().grab(false, true).hint(LIST_PX, SWT.DEFAULT).applyTo(list);
		for (Contribution<RepairStep> step : steps) {
			TableItem item = new TableItem(list, SWT.NONE);
			item.setText(RepairSteps.name(step));
			item.setChecked(true);
		}
		list.addListener(SWT.Selection, event -> {
			if (event.detail == SWT.CHECK) {
				changed.run();
			}
			go();
		});
		room = new ScrolledComposite(this, SWT.V_SCROLL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(room);
		// a bar that comes and goes would change the width that labels are wrapped to, and so itself
		room.setAlwaysShowScrollBars(true);
		room.setShowFocusedControl(true);
		room.setExpandHorizontal(true);
		room.setExpandVertical(true);
		forms = new Composite(room, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(SPACING_PX, SPACING_PX).applyTo(forms);
		room.setContent(forms);
		about = new Label(forms, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(about);
		options = new OptionForm(forms, memory, this::typed).stacked();
		GridDataFactory.fillDefaults().grab(true, false).applyTo(options);
		course = new OptionForm(forms, memory, this::typed).stacked();
		showCourse();
		GridDataFactory.fillDefaults().grab(true, false).applyTo(course);
		room.addListener(SWT.Resize, event -> fit());
		list.select(0);
		show(steps.isEmpty() ? null : steps.get(0));
	}

	/** Takes the step that is gone to and no other. */
	void onlyOne() {
		for (int i = 0; i < list.getItemCount(); i++) {
			list.getItem(i).setChecked(i == list.getSelectionIndex());
		}
		changed.run();
	}

	/** Whoever asks for the recommended course gets no leftovers of another day. */
	private void forget() {
		set.clear();
		forget(COURSE);
		steps.forEach(step -> forget(step.id()));
	}

	/** Takes all steps as they are at first. */
	void recommend() {
		for (TableItem item : list.getItems()) {
			item.setChecked(true);
		}
		forget();
		showCourse();
		show(shown);
		changed.run();
	}

	private void forget(String id) {
		try {
			memory.node().node(id).clear();
		} catch (BackingStoreException e) {
			ILog.of(StepsPanel.class).warn(e.getMessage(), e);
		}
	}

	private void showCourse() {
		course.show(COURSE, () -> List.of(TOLERANCE));
		listen(course);
	}

	/** Cut, copy, paste and select all mean the text in a field while it is typed in. */
	private void listen(OptionForm form) {
		for (Control child : form.getChildren()) {
			if (child instanceof Text) {
				child.addListener(SWT.FocusIn, event -> keys.activate());
				child.addListener(SWT.FocusOut, event -> keys.deactivate());
			}
		}
	}

	private void go() {
		int index = list.getSelectionIndex();
		if (index >= 0 && steps.get(index) != shown) {
			show(steps.get(index));
		}
	}

	private void show(Contribution<RepairStep> step) {
		shown = step;
		if (step != null) {
			options.show(step.id(), () -> RepairSteps.options(step));
			listen(options);
			about.setText(options.values().isEmpty() ? Messages.StepsPanel_noOptions : ""); //$NON-NLS-1$
			((GridData) about.getLayoutData()).exclude = about.getText().isEmpty();
			about.setVisible(!about.getText().isEmpty());
			fit();
		}
	}

	private void typed() {
		if (options.validate() && shown != null) {
			set.put(shown.id(), options.values());
			memory.keep(shown.id(), options.values());
		}
		course.validate();
		fit();
		changed.run();
	}

	private void fit() {
		forms.layout(true, true);
		int width = room.getClientArea().width;
		Point size = forms.computeSize(width > 0 ? width : SWT.DEFAULT, SWT.DEFAULT);
		room.setMinSize(0, size.y);
	}

	/** Shows at each field what is wrong with it. Whether nothing is. */
	boolean validate() {
		boolean valid = options.validate();
		return course.validate() && valid;
	}

	/** The steps that are ticked, in their order. */
	List<StepChoice> choices() {
		List<StepChoice> choices = new ArrayList<>();
		for (int i = 0; i < steps.size(); i++) {
			if (list.getItem(i).getChecked()) {
				choices.add(new StepChoice(steps.get(i), set.getOrDefault(steps.get(i).id(), Map.of())));
			}
		}
		return choices;
	}

	/** Only if what is typed is {@linkplain #validate() valid}. */
	Tolerance tolerance() {
		return new Tolerance(OptionValues.of(List.of(TOLERANCE), course.values()).length(TOLERANCE));
	}

	/** The list of steps. */
	Table list() {
		return list;
	}

	@Override
	public boolean setFocus() {
		return list.setFocus();
	}
}
