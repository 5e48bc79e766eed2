package org.trammel.shop.records;

import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * Root of a Merkle tree that only grows, as in RFC 6962, 2.1: the hash of a leaf is SHA-256(00 ‖ leaf), of a node
 * SHA-256(01 ‖ left ‖ right), of the empty tree SHA-256 of nothing; a tree of n leaves splits at the largest power of two
 * below n.
 *
 * <p>Kept are only the roots of its full subtrees, at most one for each bit of n, so that adding a leaf and telling the
 * root cost log n hashes whatever the number of leaves.
 */
final class MerkleTree {

    private static final byte LEAF = 0;
    private static final byte NODE = 1;
    private static final int HEX = 64;

    private final List<byte[]> peaks = new ArrayList<>();
    private final MessageDigest digest = Seal.digest();
    private long leaves;

    /** A tree as it stood, from what {@link #peaks()} told. */
    static MerkleTree of(long leaves, String peaks) {
        MerkleTree tree = new MerkleTree();
        if (peaks.length() != HEX * Long.bitCount(leaves)) {
            throw new IllegalArgumentException(leaves + " leaves do not have the peaks " + peaks);
        }
        tree.leaves = leaves;
        for (int at = 0; at < peaks.length(); at += HEX) {
            tree.peaks.add(HexFormat.of().parseHex(peaks, at, at + HEX));
        }
        return tree;
    }

    void add(byte[] leaf) {
        digest.update(LEAF);
        byte[] hash = digest.digest(leaf);
        // Each trailing one of the number of leaves is a full subtree as large as the one just filled.
        for (long full = leaves; (full & 1) == 1; full >>= 1) {
            hash = node(peaks.remove(peaks.size() - 1), hash);
        }
        peaks.add(hash);
        leaves++;
    }

    long leaves() {
        return leaves;
    }

    /** The root, in lower-case hexadecimal. */
    String root() {
        if (peaks.isEmpty()) {
            return HexFormat.of().formatHex(digest.digest());
        }
        byte[] root = peaks.get(peaks.size() - 1);
        for (int i = peaks.size() - 2; i >= 0; i--) {
            root = node(peaks.get(i), root);
        }
        return HexFormat.of().formatHex(root);
    }

    /** Roots of the full subtrees, the largest first, in hexadecimal one after the other. */
    String peaks() {
        StringBuilder all = new StringBuilder();
        peaks.forEach(peak -> all.append(HexFormat.of().formatHex(peak)));
        return all.toString();
    }

    private byte[] node(byte[] left, byte[] right) {
        digest.update(NODE);
        digest.update(left);
        return digest.digest(right);
    }
}
