package org.frisket.imports.dxf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.imports.UnreadableArtException;

/** Sorts the groups of a file by its sections. What stands in other sections is passed over. */
final class DrawingReader {

	/** Of a file of the largest size that holds what drawings hold; some 100 bytes each. */
	static final int MOST_GROUPS = 4_000_000;
	/** From here on groups hold handles, styles and the data of programs; what is drawn is all before it. */
	private static final int FIRST_OF_OTHERS = 300;

	private final String file;
	private final GroupReader reader;
	private final Monitor monitor;
	private final Drawing drawing = new Drawing();
	private Group group;
	private int kept;
	private boolean entitiesSeen;

	DrawingReader(String file, GroupReader reader, Monitor monitor) {
		this.file = file;
		this.reader = reader;
		this.monitor = monitor;
	}

	Drawing read() throws IOException, UnreadableArtException {
		advance();
		while (group != null) {
			if (group.is(0, "SECTION")) {
				advance();
				section(group == null ? "" : group.value().toUpperCase(java.util.Locale.ROOT));
			} else {
				advance();
			}
		}
		if (!entitiesSeen) {
			throw new UnreadableArtException(file, "", Messages.DrawingReader_noEntities);
		}
		return drawing;
	}

	private void advance() throws IOException, UnreadableArtException {
		group = reader.next();
	}

	private void section(String name) throws IOException, UnreadableArtException {
		switch (name) {
		case "HEADER" -> header();
		case "TABLES" -> tables();
		case "BLOCKS" -> blocks();
		case "ENTITIES" -> {
			entitiesSeen = true;
			advance();
			drawing.entities().addAll(entities());
		}
		default -> {
			while (inSection()) {
				advance();
			}
		}
		}
	}

	private boolean inSection() {
		return group != null && !group.is(0, "ENDSEC");
	}

	private void header() throws IOException, UnreadableArtException {
		while (inSection()) {
			boolean unit = group.is(9, "$INSUNITS");
			advance();
			if (unit && group != null && group.code() == 70) {
				drawing.setUnit((int) new Entity(file, group).number(group));
			}
		}
	}

	private void tables() throws IOException, UnreadableArtException {
		while (inSection()) {
			if (group.is(0, "LAYER")) {
				Entity layer = entity();
				drawing.addLayer(layer.text(2, ""),
						new Drawing.Layer(layer.integer(62, 7), layer.flag(70, 1)));
			} else {
				advance();
			}
		}
	}

	private void blocks() throws IOException, UnreadableArtException {
		while (inSection()) {
			if (group.is(0, "BLOCK")) {
				Entity start = entity();
				Point base = start.point(10);
				drawing.addBlock(start.text(2, ""), new Drawing.Block(base, entities()));
			} else {
				advance();
			}
		}
	}

	/** Those up to the end of the section or block. */
	private List<Entity> entities() throws IOException, UnreadableArtException {
		List<Entity> entities = new ArrayList<>();
		while (inSection() && !group.is(0, "ENDBLK")) {
			monitor.check();
			if (group.code() != 0) {
				advance();
				continue;
			}
			Entity entity = entity();
			if (entity.type().equals("POLYLINE")
					|| entity.type().equals("INSERT") && entity.integer(66, 0) == 1) {
				parts(entity);
			}
			entities.add(entity);
		}
		return entities;
	}

	/** Vertices of a polyline, or what is written beside a block. */
	private void parts(Entity whole) throws IOException, UnreadableArtException {
		while (inSection() && !group.is(0, "SEQEND") && !group.is(0, "ENDBLK")) {
			if (!group.is(0, "VERTEX") && !group.is(0, "ATTRIB")) {
				throw reader.failure(group, NLS.bind(Messages.DrawingReader_noSequenceEnd, whole.type()));
			}
			whole.add(entity());
		}
		if (group != null && group.is(0, "SEQEND")) {
			entity();
		}
	}

	/** From its first group up to the next with code 0. */
	private Entity entity() throws IOException, UnreadableArtException {
		Entity entity = new Entity(file, group);
		advance();
		keep();
		while (group != null && group.code() != 0) {
			if (isOfUse(group.code())) {
				entity.add(group);
				keep();
			}
			advance();
		}
		return entity;
	}

	/** Names of classes and lists of handles come with every entity of newer files; nothing here asks for them. */
	private static boolean isOfUse(int code) {
		return code < FIRST_OF_OTHERS && code != 100 && code != 102;
	}

	private void keep() throws UnreadableArtException {
		if (++kept > MOST_GROUPS) {
			throw reader.failure(NLS.bind(Messages.DrawingReader_tooMany, MOST_GROUPS));
		}
	}
}
