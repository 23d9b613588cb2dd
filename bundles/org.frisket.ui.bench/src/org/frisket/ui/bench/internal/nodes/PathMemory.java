package org.frisket.ui.bench.internal.nodes;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.PathDataException;
import org.frisket.geometry.nodes.NodePath;
import org.frisket.model.Outline;

/** The paths an outline has had lately. Path data does not say what kind a node is of; undo and redo find it here. */
final class PathMemory {

	private static final int MOST = 200;

	private final Map<String, NodePath> paths = new LinkedHashMap<>();

	void remember(NodePath path) {
		remember(path.pathData(), path);
	}

	private void remember(String pathData, NodePath path) {
		paths.remove(pathData);
		paths.put(pathData, path);
		if (paths.size() > MOST) {
			paths.remove(paths.keySet().iterator().next());
		}
	}

	/**
	 * The path an outline has now; empty if it has no nodes.
	 *
	 * @throws PathDataException if it cannot be read
	 */
	Optional<NodePath> of(Outline outline) {
		String pathData = outline.getPathData() == null ? "" : outline.getPathData(); //$NON-NLS-1$
		if (!paths.containsKey(pathData)) {
			remember(pathData, NodePath.parse(pathData));
		}
		return Optional.of(paths.get(pathData)).filter(path -> !path.isEmpty());
	}

	void clear() {
		paths.clear();
	}
}
