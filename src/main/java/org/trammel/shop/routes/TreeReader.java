package org.trammel.shop.routes;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.trammel.shop.routes.Tree.Flaw;
import org.trammel.shop.routes.Tree.Fork;
import org.trammel.shop.routes.Tree.Leaf;
import org.trammel.shop.routes.Tree.Place;
import org.trammel.shop.routes.Tree.Row;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Reads YAML into a tree that knows its lines. Nothing in a file can name a class. */
final class TreeReader {

    private static final int LONGEST_FILE = 200_000;

    private static final int DEEPEST = 20;

    private final String file;

    private TreeReader(String file) {
        this.file = file;
    }

    static Tree read(String file, String text) {
        TreeReader reader = new TreeReader(file);
        if (text.length() > LONGEST_FILE) {
            throw new Flaw(new Place(file, 1), "the file is longer than " + LONGEST_FILE + " characters");
        }
        LoaderOptions options = new LoaderOptions();
        options.setMaxAliasesForCollections(50);
        options.setNestingDepthLimit(DEEPEST);
        try {
            Node node = new Yaml(options).compose(new StringReader(text));
            if (node == null) {
                throw new Flaw(new Place(file, 1), "the file is empty");
            }
            return reader.tree(node, 0);
        } catch (MarkedYAMLException e) {
            int line = e.getProblemMark() == null ? 1 : e.getProblemMark().getLine() + 1;
            throw new Flaw(new Place(file, line), e.getProblem() == null ? "it cannot be read" : e.getProblem());
        } catch (YAMLException e) {
            throw new Flaw(new Place(file, 1), "it cannot be read: " + e.getMessage());
        }
    }

    private Tree tree(Node node, int depth) {
        Place place = new Place(file, node.getStartMark().getLine() + 1);
        if (depth > DEEPEST) {
            throw new Flaw(place, "lists stand in one another more than " + DEEPEST + " deep");
        }
        if (node instanceof ScalarNode scalar) {
            return new Leaf(place, scalar.getValue());
        }
        if (node instanceof SequenceNode sequence) {
            List<Tree> items = new ArrayList<>();
            sequence.getValue().forEach(item -> items.add(tree(item, depth + 1)));
            return new Row(place, items);
        }
        if (node instanceof MappingNode mapping) {
            Map<String, Tree> parts = new LinkedHashMap<>();
            for (NodeTuple tuple : mapping.getValue()) {
                Place at = new Place(file, tuple.getKeyNode().getStartMark().getLine() + 1);
                if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                    throw new Flaw(at, "a name is a word");
                }
                if (parts.put(key.getValue(), tree(tuple.getValueNode(), depth + 1)) != null) {
                    throw new Flaw(at, key.getValue() + " stands here twice");
                }
            }
            return new Fork(place, parts);
        }
        throw new Flaw(place, "it is neither a text, a list nor named parts");
    }
}
