package org.frisket.ui.bench.internal.handlers.sight;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.frisket.editing.Edit;
import org.frisket.editing.EditGroup;
import org.frisket.editing.elements.SetElements;
import org.frisket.editing.layers.SetLayers;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Hides or locks what is selected, or shows or frees everything; which of these is named after the class. */
public final class SightHandler extends BenchHandler implements IExecutableExtension {

	private String what;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		what = String.valueOf(data);
	}

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.typing().end(true);
		List<Element> selected = Selection.elements(bench.viewer());
		bench.commandStack().execute(new EditCommand(edit(bench.document().job(), selected)));
	}

	private Edit edit(Job job, List<Element> selected) {
		List<Layer> layers = job.getLayers();
		return switch (what) {
		case "hide" -> SetElements.visible(selected, false); //$NON-NLS-1$
		case "lock" -> SetElements.locked(selected, true); //$NON-NLS-1$
		case "showAll" -> new EditGroup(Messages.SightHandler_showAll, //$NON-NLS-1$
				List.of(SetElements.visible(Jobs.elements(job), true), SetLayers.visible(layers, true)));
		case "unlockAll" -> new EditGroup(Messages.SightHandler_unlockAll, //$NON-NLS-1$
				List.of(SetElements.locked(Jobs.elements(job), false), SetLayers.locked(layers, false)));
		default -> throw new IllegalStateException("no such command: " + what); //$NON-NLS-1$
		};
	}
}
