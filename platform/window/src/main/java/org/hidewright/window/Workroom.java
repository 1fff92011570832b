package org.hidewright.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.workshop.Stock;
import org.hidewright.window.model.Memory;
import org.hidewright.window.papers.Writers;
import org.hidewright.window.words.WindowTexts;

/**
 * What a window works with.
 *
 * @param catalogue what is installed
 * @param stock what can be taken from the workshop
 * @param settings the maker’s folder of settings; need not be there
 * @param memory what is kept from one time to the next
 * @param units of what says nothing of them itself
 * @param texts in the maker’s language
 * @param asks asks the maker for files
 * @param writers who writes documents
 * @param readers who reads drawings
 * @param addOns what can be turned on and off; empty where nothing can
 * @param samples the folder of projects that came with the program; need not be there
 * @param work the one thread calculators are called on
 */
record Workroom(
        Catalogue catalogue,
        Stock stock,
        Path settings,
        Memory memory,
        UnitsSeen units,
        WindowTexts texts,
        FileAsking asks,
        Writers writers,
        List<DrawingReader> readers,
        Optional<AddOns> addOns,
        Path samples,
        Executor work) {}
