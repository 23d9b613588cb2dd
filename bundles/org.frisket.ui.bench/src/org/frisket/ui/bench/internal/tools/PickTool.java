package org.frisket.ui.bench.internal.tools;

import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.draw2d.Cursors;
import org.eclipse.gef.tools.TargetingTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.parts.ElementPart;

/** Waits for an element to be clicked, and says beside the pointer which. Escape gives up. */
public final class PickTool extends TargetingTool {

	private final String prompt;
	private final Predicate<Element> wanted;
	private final Consumer<Element> picked;
	private PointerTag tag;

	public PickTool(String prompt, Predicate<Element> wanted, Consumer<Element> picked) {
		this.prompt = prompt;
		this.wanted = wanted;
		this.picked = picked;
		setDefaultCursor(Cursors.HAND);
		setDisabledCursor(Cursors.NO);
	}

	private boolean isWanted() {
		return getTargetEditPart() instanceof ElementPart part && wanted.test(part.element());
	}

	@Override
	protected String getCommandName() {
		return "pick"; //$NON-NLS-1$
	}

	@Override
	protected Cursor calculateCursor() {
		return isWanted() ? Cursors.HAND : Cursors.NO;
	}

	@Override
	protected boolean updateTargetUnderMouse() {
		// what is under the pointer itself, and not who would take a command there
		var part = getCurrentViewer().findObjectAt(getLocation());
		boolean other = part != getTargetEditPart();
		if (other) {
			setTargetEditPart(part);
		}
		return other;
	}

	@Override
	protected boolean handleMove() {
		updateTargetUnderMouse();
		if (tag == null) {
			tag = new PointerTag(getCurrentViewer());
		}
		tag.show(prompt, getLocation());
		refreshCursor();
		return true;
	}

	@Override
	protected boolean handleButtonDown(int button) {
		updateTargetUnderMouse();
		if (button == 1 && isWanted()) {
			Element element = ((ElementPart) getTargetEditPart()).element();
			leave();
			picked.accept(element);
		}
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.ESC) {
			leave();
			return true;
		}
		return super.handleKeyDown(event);
	}

	private void leave() {
		getDomain().loadDefaultTool();
	}

	@Override
	public void deactivate() {
		if (tag != null) {
			tag.erase();
			tag = null;
		}
		super.deactivate();
	}
}
