package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source: the test vectors of the Certificate Transparency reference implementation for RFC 6962 (eight leaves, and the
 * roots of the trees of their first n).
 */
class MerkleTreeTest {

    private static final String[] LEAVES = {
        "", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f"
    };

    @ParameterizedTest
    @CsvSource({
        "0, e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
        "1, 6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
        "2, fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
        "3, aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
        "4, d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
        "7, ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
        "8, 5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328"
    })
    void theRootsOfTheReferenceComeOut(int leaves, String root) {
        MerkleTree tree = new MerkleTree();
        for (int i = 0; i < leaves; i++) {
            tree.add(HexFormat.of().parseHex(LEAVES[i]));
        }
        assertThat(tree.root()).isEqualTo(root);
        assertThat(tree.leaves()).isEqualTo(leaves);
    }

    @Test
    void aTreeGrowsOnFromItsPeaks() {
        MerkleTree whole = new MerkleTree();
        MerkleTree grown = new MerkleTree();
        for (int i = 0; i < 100; i++) {
            byte[] leaf = {(byte) i};
            whole.add(leaf);
            grown = MerkleTree.of(grown.leaves(), grown.peaks());
            grown.add(leaf);
            assertThat(grown.root()).isEqualTo(whole.root());
        }
        String peaks = whole.peaks();
        assertThatThrownBy(() -> MerkleTree.of(101, peaks)).isInstanceOf(IllegalArgumentException.class);
    }
}
