package org.hidewright.command;

import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WorkshopFile;
import org.hidewright.core.workshop.Stock;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The option that names the workshop file, and reading that file. */
final class WorkshopOption {
    static final String NAME = "--workshop";

    private WorkshopOption() {}

    static void describe(CommandSpec spec, CommandTexts texts) {
        spec.addOption(OptionSpec.builder(NAME)
                .paramLabel("FILE")
                .type(String.class)
                .description(texts.text("option.workshop"))
                .build());
    }

    /**
     * What can be taken: the tables that are installed, and the file if one is named. What is wrong with the file is told.
     *
     * @throws FileTrouble if it cannot be read or is no workshop
     */
    static Stock stock(ParseResult arguments, Session session) throws FileTrouble, BadArgument {
        Stock stock = Stock.of(session.catalogue()::tables);
        String name = arguments.matchedOptionValue(NAME, (String) null);
        return name == null ? stock : read(name, stock, session);
    }

    /**
     * Stock with a workshop file; what is wrong with that is told.
     *
     * @throws FileTrouble if it cannot be read or is no workshop
     */
    static Stock read(String name, Stock stock, Session session) throws FileTrouble, BadArgument {
        WorkshopFile file = WorkshopFile.open(FileText.named(name, session.texts()), stock);
        file.remarks().forEach(remark -> session.tell(session.err(), remark));
        return file.stock();
    }
}
