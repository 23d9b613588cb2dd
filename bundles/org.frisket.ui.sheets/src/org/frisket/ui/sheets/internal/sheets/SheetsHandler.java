package org.frisket.ui.sheets.internal.sheets;

import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command at the sheets; which one is named after the class in the contribution. */
public final class SheetsHandler extends AbstractHandler implements IExecutableExtension {

	private static final double QUARTER = 90;
	private static final String RIGHT = "org.frisket.ui.bench.command.nudge.right"; //$NON-NLS-1$
	private static final String DOWN = "org.frisket.ui.bench.command.nudge.down"; //$NON-NLS-1$

	private String name;
	private Consumer<SheetsView> action;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data)
			throws CoreException {
		name = String.valueOf(data);
		action = switch (name) {
		case "lay" -> SheetsView::layOrStop; //$NON-NLS-1$
		case "turnRight" -> view -> view.actions().turn(QUARTER); //$NON-NLS-1$
		case "turnLeft" -> view -> view.actions().turn(-QUARTER); //$NON-NLS-1$
		case "pin" -> view -> view.actions().pin(); //$NON-NLS-1$
		case "duplicate" -> view -> view.actions().duplicate(); //$NON-NLS-1$
		case "delete" -> view -> view.actions().delete(); //$NON-NLS-1$
		case "forget" -> view -> view.actions().forget(); //$NON-NLS-1$
		case "addSheet" -> view -> view.actions().addSheet(); //$NON-NLS-1$
		case "removeSheet" -> view -> view.actions().removeSheet(); //$NON-NLS-1$
		case "takeAlong" -> view -> view.actions().takeAlong(); //$NON-NLS-1$
		case "keepOffcut" -> view -> view.actions().keepOffcut(); //$NON-NLS-1$
		case "leftoverUsed" -> view -> view.actions().leftoverUsed(); //$NON-NLS-1$
		case "selectAll" -> view -> view.surface().selectAll(); //$NON-NLS-1$
		case "zoomIn" -> view -> view.surface().zoom().in(); //$NON-NLS-1$
		case "zoomOut" -> view -> view.surface().zoom().out(); //$NON-NLS-1$
		case "zoomTrue" -> view -> view.surface().zoom().trueSize(); //$NON-NLS-1$
		case "zoomFit" -> view -> view.surface().fit(); //$NON-NLS-1$
		case "zoomSelection" -> view -> view.surface().fitSelection(); //$NON-NLS-1$
		case "nudge" -> null; //$NON-NLS-1$
		default -> throw new CoreException(Status.error("no command of the sheets is called " + data)); //$NON-NLS-1$
		};
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		if (HandlerUtil.getActivePart(event) instanceof SheetsView view && view.front() != null) {
			if (action == null) {
				view.actions().nudge(mm(event, RIGHT), mm(event, DOWN));
			} else {
				action.accept(view);
			}
		}
		return null;
	}

	private static double mm(ExecutionEvent event, String parameter) throws ExecutionException {
		String text = event.getParameter(parameter);
		try {
			return text == null ? 0 : Double.parseDouble(text);
		} catch (NumberFormatException e) {
			throw new ExecutionException("not a distance in mm: " + text, e); //$NON-NLS-1$
		}
	}
}
