package org.frisket.ui.bench.internal.handlers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.Edit;
import org.frisket.editing.MakeOutline;
import org.frisket.model.Element;
import org.frisket.model.Wording;
import org.frisket.prepare.OwnPath;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.parts.Selection;

/** Makes outlines of the selected wordings, for good but for an undo. */
public final class MakeOutlineHandler extends ElementHandler {

	@Override
	Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		PreparedJob prepared = bench.document().picture().prepared();
		Map<Wording, String> paths = new LinkedHashMap<>();
		for (Element element : elements) {
			if (element instanceof Wording wording) {
				// only what is worked through as it is now; until then nothing is done
				Optional<PreparedElement> shown = Optional.ofNullable(prepared)
						.flatMap(all -> all.element(wording.getId()))
						.filter(found -> EcoreUtil.equals(found.element(), wording));
				paths.put(wording, shown.map(OwnPath::of).orElse("")); //$NON-NLS-1$
			}
		}
		boolean late = paths.containsValue(""); //$NON-NLS-1$
		bench.say(paths.isEmpty() ? Messages.MakeOutlineHandler_noWording
				: late ? Messages.MakeOutlineHandler_notYet : null);
		return new MakeOutline(paths);
	}

	@Override
	void done(BenchEditor bench, Edit edit) {
		List<? extends Element> outlines = ((MakeOutline) edit).outlines();
		if (!outlines.isEmpty()) {
			Selection.select(bench.viewer(), outlines);
		}
	}
}
