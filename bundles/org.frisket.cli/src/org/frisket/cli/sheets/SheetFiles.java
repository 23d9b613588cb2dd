package org.frisket.cli.sheets;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.frisket.cli.work.WholeFiles;
import org.frisket.export.ExportTask;
import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.prepare.extension.Contribution;
import org.frisket.run.Workshop;
import org.frisket.sheets.LaidSheet;
import org.frisket.toolpath.RunChoices;

/** Sheets as files, each its own: with its number behind the name if there are several. */
record SheetFiles(List<LaidSheet> sheets, Map<String, String> options) {

	/** @param target of a format there is */
	void addTo(WholeFiles files, Path target) {
		Contribution<Exporter> exporter = Exporters.forFile(target.getFileName().toString()).orElseThrow();
		for (int i = 0; i < sheets.size(); i++) {
			Handoff sheet = Handoff.of(sheets.get(i), Workshop.plain(), RunChoices.plain());
			files.add(sheets.size() == 1 ? target : numbered(target, i + 1),
					file -> new ExportTask(exporter).write(sheet, options, Monitor.NONE, file));
		}
	}

	private static Path numbered(Path target, int number) {
		String name = target.getFileName().toString();
		int dot = name.lastIndexOf('.');
		return target.resolveSibling(name.substring(0, dot) + "-" + number + name.substring(dot));
	}
}
