package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputGroup;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.report.ReportJson;
import org.duskloom.engine.report.ReportTables;
import org.duskloom.engine.report.page.ReportPage;

/** The files of one {@code report}: they are begun before the work, and get their names together. */
final class ReportFiles implements AutoCloseable {
    private final LoadedShow show;
    private final OutputGroup group;
    private final Optional<StagedFile> page;
    private final Optional<StagedFile> json;
    private final List<StagedFile> tables = new ArrayList<>();

    /**
     * Begins them.
     *
     * @param page its name; null for none, as for the others
     * @throws MisuseException if one may not be written there
     */
    ReportFiles(LoadedShow show, Path page, Path json, Path csv, IfExists ifExists) throws IOException {
        this.show = show;
        this.group = new OutputGroup(ifExists);
        try {
            this.page = begin(page);
            this.json = begin(json);
            if (csv != null) {
                PartsTable.OF_REPORT.refuseOther(csv, "--csv");
                for (String name : ReportTables.NAMES) {
                    tables.add(begin(csv.resolve(name)).orElseThrow());
                }
            }
        } catch (IOException | RuntimeException refused) {
            group.close();
            throw refused;
        }
    }

    private Optional<StagedFile> begin(Path file) throws IOException {
        if (file == null) {
            return Optional.empty();
        }
        show.refuseAsOutput(file);
        return Optional.of(group.open(file));
    }

    /** How many there are. */
    int count() {
        return (page.isPresent() ? 1 : 0) + (json.isPresent() ? 1 : 0) + tables.size();
    }

    /** Writes all of them and gives them their names. */
    void write(Report report, CsvStyle style) throws IOException {
        if (page.isPresent()) {
            page.get().writeWhole(ReportPage.of(report));
        }
        if (json.isPresent()) {
            json.get().writeWhole(ReportJson.of(report));
        }
        if (!tables.isEmpty()) {
            Map<String, String> texts = ReportTables.of(report, show.show().map(), style);
            for (int i = 0; i < tables.size(); i++) {
                tables.get(i).writeWhole(texts.get(ReportTables.NAMES.get(i)));
            }
        }
        group.publish();
    }

    @Override
    public void close() {
        group.close();
    }
}
