package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with the command line is said in two lines, nothing is written, and the exit code is 2. */
class UsageTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    rendr                          | duskloom | there is no command rendr; did you mean render?
                    --versoin                      | duskloom | there is no option --versoin; did you mean --version?
                    render SHOW -o OUT --frmes 0..2 | duskloom render | there is no option --frmes; did you mean --frames?
                    render SHOW                    | duskloom render | missing required option: '--output=DIR'
                    render -o OUT                  | duskloom render | missing required parameter: 'SHOW.json'
                    render SHOW SHOW2 -o OUT       | duskloom render | 'SHOW2' is one too many
                    strip SHOW -o A.png --on b c d | duskloom strip | 'c' is one too many; --on takes one at a time: type it before each, and put a name with blanks in quotes
                    strip --on b SHOW c -o A.png   | duskloom strip | 'c' is one too many; --on takes one at a time: type it before each, and put a name with blanks in quotes
                    strip SHOW c --on b -o A.png   | duskloom strip | 'c' is one too many
                    strip SHOW -o A.png c --on b   | duskloom strip | 'c' is one too many
                    map SHOW TWO.csv -o OUT        | duskloom map | 'TWO.csv' is one too many; if pixels were measured there, put --from before it, and if the map is to stand there, put -o before it
                    map SHOW TWO.csv THREE -o OUT  | duskloom map | 'THREE' is one too many
                    render SHOW -o OUT --as rgb, npy    | duskloom render | there is a blank after a comma; write rgb,npy
                    render SHOW -o OUT --as rgb, npy, singles | duskloom render | there is a blank after a comma; write rgb,npy,singles
                    render SHOW -o EMPTY           | duskloom render | invalid value for option '--output': an empty text is not the name of a file or a folder; . is the folder in which you are
                    strip SHOW -o EMPTY            | duskloom strip | invalid value for option '--output': an empty text is not the name of a file or a folder; . is the folder in which you are
                    check EMPTY                    | duskloom check | invalid value for positional parameter at index 0..* (FILE.json): an empty text is not the name of a file or a folder; . is the folder in which you are
                    render SHOW -o OUT --threads x | duskloom render | invalid value for option '--threads': 'x' is not a whole number
                    render SHOW -o OUT --threads 0 | duskloom render | --threads is 0; allowed: 1 to 256
                    render SHOW -o OUT --threads 257 | duskloom render | --threads is 257; allowed: 1 to 256
                    render SHOW -o OUT --frames 70..81 | duskloom render | --frames 70..81 goes beyond the show; allowed: 0..80 or a part of it, as it has 80 frames
                    render SHOW -o - --strip       | duskloom render | --strip needs a folder, and -o is the standard output
                    strip SHOW -o OUT --kind film  | duskloom strip | invalid value for option '--kind': 'film' is neither contact nor time
                    strip SHOW -o OUT --count 0    | duskloom strip | --count is 0; allowed: 1 to 100000
                    strip SHOW -o OUT --columns -1 | duskloom strip | --columns is -1; allowed: 1 to 100000
                    strip SHOW -o OUT --pixel-size 101 | duskloom strip | --pixel-size is 101; allowed: 1 to 100
                    strip SHOW -o OUT --kind time --columns 3 | duskloom strip | --columns is for contact strips; a time strip has a column for each frame
                    strip SHOW -o OUT.png --from 2 | duskloom strip | --from: the time "2" has no unit; write "2s" for seconds or "2ms"
                    strip SHOW -o OUT.png --from 3s    | duskloom strip | --from 3s lies beyond the show; it lasts 2s
                    strip SHOW -o OUT.png --from 1s --to 1s | duskloom strip | no frame lies between 1s and 1s; a frame lasts 0.025s, and the show 2s
                    strip SHOW -o OUT.png --from 1ms --to 2ms | duskloom strip | no frame lies between 0.001s and 0.002s; a frame lasts 0.025s, and the show 2s
                    strip SHOW -o OUT.jpg          | duskloom strip | -o OUT.jpg: the picture is a PNG; give it a name that ends in .png
                    strip SHOW -o OUT              | duskloom strip | -o OUT: the picture is a PNG; give it a name that ends in .png
                    strip SHOW -o OUT.png --count 99999999999 | duskloom strip | invalid value for option '--count': '99999999999' is too large
                    sheet SHOW -o OUT --hole 1,5   | duskloom sheet | invalid value for option '--hole': '1,5' is not a number; the decimal sign is a dot: 1.5
                    sheet SHOW -o OUT --semicolons=yes | duskloom sheet | --semicolons takes no value: write it alone, or leave it out
                    render SHOW -o OUT --force=1   | duskloom render | --force takes no value: write it alone, or leave it out
                    render SHOW -o OUT --threads 2 --threads=3 | duskloom render | --threads stands twice, with 2 and with 3; which of them is meant?
                    render SHOW -oa --output OUT   | duskloom render | --output stands twice, with a and with OUT; which of them is meant?
                    check SHOW --times --times     | duskloom check | --times stands twice; once is enough
                    effects sweap                  | duskloom effects | there is no effect 'sweap'; did you mean "sweep"?
                    check                          | duskloom check | missing required parameter: 'FILE.json'
                    """)
    void isExplained(String line, String command, String message) throws IOException {
        Path show = Garden.in(folder);
        List<Object> arguments = new ArrayList<>();
        for (String word : line.split(" ")) {
            arguments.add(word.replace("SHOW", show.toString())
                    .replace("OUT", folder + "/out")
                    .replace("EMPTY", ""));
        }
        Ran ran = Ran.with(arguments.toArray()).without(folder);
        String help = "'" + command + " --help' shows what it takes.\n";
        assertThat(ran.err().replace("show.json2", "SHOW2"))
                .isEqualTo(command + ": " + message.replace("OUT", "out") + "\n" + help);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void thereMustBeACommand() {
        String err = "duskloom: no command was given\n'duskloom --help' shows what it takes.\n";
        assertThat(Ran.with()).isEqualTo(new Ran(2, "", err));
    }
}
