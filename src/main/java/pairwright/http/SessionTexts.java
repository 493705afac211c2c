package pairwright.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairwright.advice.Knowledge;
import pairwright.catalogue.FileFault;
import pairwright.catalogue.YamlFile;
import pairwright.model.Fault;
import pairwright.session.LineUp;
import pairwright.sheet.SessionText;

/** Line-ups as the pages keep them, which is JSON, and as people bring them along, in YAML as well. */
final class SessionTexts implements SessionText {
    private static final Path YAML = Path.of("line-up.yaml");
    private static final Path JSON = Path.of("line-up.json");

    private final ObjectMapper json;

    SessionTexts(ObjectMapper json) {
        this.json = json;
    }

    @Override
    public String written(LineUp lineUp) {
        try {
            return json.writeValueAsString(SessionJson.of(lineUp));
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    @Override
    public Read read(String text, Knowledge known) {
        List<FileFault> faults = new ArrayList<>();
        Optional<YamlFile> file = YamlFile.of(text.stripLeading().startsWith("{") ? JSON : YAML, text, faults);
        if (file.isEmpty()) {
            return new Read(null, List.of(), faults.stream().map(fault -> new Fault("line " + fault.line(), fault.says())).toList());
        }
        SessionBody.Read read = SessionBody.plan(file.get().root(), known);
        List<Fault> told = read.faults().stream().map(fault -> new Fault("line " + file.get().at(fault.at()).line(), fault.says())).toList();
        return read.request() == null ? new Read(null, List.of(), told) : new Read(read.request().lineUp(), read.request().assumed(), told);
    }

    @Override
    public String demo() {
        return SessionExample.yaml();
    }
}
