package org.frisket.ui.views.internal.properties.wording;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.editing.Edit;
import org.frisket.editing.EditGroup;
import org.frisket.editing.wording.ChangeFlow;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.geometry.Bounds;
import org.frisket.model.Alignment;
import org.frisket.model.Flow;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.FlowPlace;
import org.frisket.ui.LengthText;
import org.frisket.ui.views.internal.ElementText;
import org.frisket.ui.views.internal.properties.Subject;
import org.frisket.ui.views.internal.properties.fields.Choice;
import org.frisket.ui.views.internal.properties.fields.Form;
import org.frisket.ui.views.internal.properties.fields.LengthField;

/** What the lines of the selected wordings run along, with what belongs to it alone. */
public final class FlowForm extends WordingPart {

	private final Choice<Outline> outline;
	private boolean outlineMissing;

	public FlowForm(Composite parent, Subject subject) {
		super(parent, Messages.FlowForm_title, true, subject);
		add(new Choice<>(row(Messages.FlowForm_flow), List.of(Flow.values()), FlowForm::name, common(Wording::getFlow),
				this::setFlow));
		Composite missing = wide(Messages.FlowForm_noOutline);
		Label note = new Label(missing, SWT.WRAP);
		note.setText(Messages.FlowForm_noOutline);
		Form.fill(note);
		showWhen(() -> outlineMissing, missing);
		addArc();
		outline = addPath();
		Composite width = row(Messages.FlowForm_boxWidth);
		lengthOrNone(width, Messages.FlowForm_boxNone, LengthField.AMOUNT, Wording::getBoxWidth,
				(w, mm) -> ChangeFlow.box(w, mm, mm > 0 && !(w.getBoxHeight() > 0) ? mm : mm > 0 ? w.getBoxHeight() : 0))
				.control().setToolTipText(Messages.FlowForm_boxTip);
		Composite height = row(Messages.FlowForm_boxHeight);
		lengthOrNone(height, Messages.FlowForm_boxNone, LengthField.AMOUNT, Wording::getBoxHeight,
				(w, mm) -> ChangeFlow.box(w, mm > 0 && !(w.getBoxWidth() > 0) ? mm : mm > 0 ? w.getBoxWidth() : 0, mm))
				.control().setToolTipText(Messages.FlowForm_boxTip);
		showWhen(() -> isAll(Flow.STRAIGHT), width, height);
	}

	private void addArc() {
		Composite radius = row(Messages.FlowForm_radius);
		length(radius, LengthField.SIZE, Wording::getArcRadius, ChangeFlow::arcRadius);
		slide(radius, 5, 300, 1, Wording::getArcRadius, ChangeFlow::arcRadius);
		Composite turn = row(Messages.FlowForm_angle);
		angle(turn, Wording::getArcAngle, ChangeFlow::arcAngle).control().setToolTipText(Messages.FlowForm_angleTip);
		slide(turn, -180, 180, 1, Wording::getArcAngle, ChangeFlow::arcAngle);
		Composite inside = tick(Messages.FlowForm_inside, Wording::isArcInside, ChangeFlow::arcInside);
		Composite inward = tick(Messages.FlowForm_inward, Wording::isArcInward, ChangeFlow::arcInward);
		showWhen(() -> isAll(Flow.ARC), radius, turn, inside, inward);
	}

	private Choice<Outline> addPath() {
		Composite path = row(Messages.FlowForm_outline);
		Choice<Outline> choice = add(new Choice<>(path, List.of(), this::name, common(Wording::getPath), this::setPath));
		Composite pick = wide(Messages.FlowForm_pick);
		Button button = new Button(pick, SWT.PUSH);
		button.setText(Messages.FlowForm_pick);
		button.setToolTipText(Messages.FlowForm_pickTip);
		button.setData(NAME, Messages.FlowForm_pick);
		GridDataFactory.fillDefaults().align(SWT.LEFT, SWT.CENTER).applyTo(button);
		button.addListener(SWT.Selection, event -> pick());
		Composite start = row(Messages.FlowForm_start);
		length(start, LengthField.ANY, Wording::getPathStart, ChangeFlow::pathStart);
		slide(start, -100, 300, 1, Wording::getPathStart, ChangeFlow::pathStart);
		Composite reversed = tick(Messages.FlowForm_reversed, Wording::isPathReversed, ChangeFlow::pathReversed);
		Composite hanging = tick(Messages.FlowForm_hanging, Wording::isPathHanging, ChangeFlow::pathHanging);
		showWhen(() -> isAll(Flow.PATH), path, pick, start, reversed, hanging);
		return choice;
	}

	private boolean isAll(Flow flow) {
		return Subject.common(subject.wordings(), Wording::getFlow) == flow;
	}

	private List<Outline> outlines() {
		return subject.bench() == null ? List.of() : Jobs.elements(subject.bench().job()).stream()
				.filter(Outline.class::isInstance).map(Outline.class::cast).toList();
	}

	private void setFlow(Flow flow) {
		if (flow == Flow.PATH) {
			List<Outline> all = outlines();
			outlineMissing = all.isEmpty();
			if (!all.isEmpty()) {
				each(w -> ChangeFlow.along(w, w.getPath() == null ? all.get(0) : w.getPath()));
			}
		} else {
			outlineMissing = false;
			subject.execute(bent(flow));
		}
		refresh();
	}

	/** Text on a circle has its middle at the top, unless its lines were aligned otherwise on purpose. */
	private Edit bent(Flow flow) {
		List<Edit> edits = new ArrayList<>();
		for (Wording wording : subject.wordings()) {
			Bounds seen = subject.bench().bounds(List.of(wording));
			boolean centred = flow == Flow.ARC && wording.getFlow() != Flow.ARC && wording.getAlignment() == Alignment.LEFT;
			Alignment alignment = centred ? Alignment.CENTRE : wording.getAlignment();
			edits.add(ChangeFlow.to(wording, flow, FlowPlace.of(wording, flow, alignment, seen)));
			edits.add(ChangeWording.alignment(wording, alignment));
		}
		return new EditGroup(edits.get(0).name(), edits);
	}

	private void setPath(Outline path) {
		each(w -> ChangeFlow.along(w, path));
	}

	private void pick() {
		List<Wording> wordings = subject.wordings();
		subject.bench().pick(Messages.FlowForm_pickPrompt, Outline.class::isInstance,
				picked -> subject.execute(wordings, w -> ChangeFlow.along(w, (Outline) picked)));
	}

	@Override
	public void refresh() {
		if (!heading().isFolded()) {
			List<Outline> all = outlines();
			if (!all.equals(outline.values())) {
				outline.setValues(all);
			}
			outlineMissing &= all.isEmpty();
		}
		super.refresh();
	}

	@Override
	public void reset() {
		outlineMissing = false;
		super.reset();
		refresh();
	}

	/** Its name, or else where it lies. */
	private String name(Outline path) {
		boolean named = path.getName() != null && !path.getName().isBlank();
		Bounds bounds = subject.bench().bounds(List.of(path));
		return named || bounds.isEmpty() ? ElementText.of(path)
				: NLS.bind(Messages.FlowForm_outlineAt, ElementText.of(path), LengthText.place(bounds.minX(), bounds.minY()));
	}

	private static String name(Flow flow) {
		return switch (flow) {
		case STRAIGHT -> Messages.FlowForm_straight;
		case STACKED -> Messages.FlowForm_stacked;
		case ARC -> Messages.FlowForm_arc;
		case PATH -> Messages.FlowForm_path;
		};
	}
}
