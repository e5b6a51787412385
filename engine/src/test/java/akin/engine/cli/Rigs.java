package akin.engine.cli;

/** Rig texts that the checks of the command line share. All gear in them is invented. */
final class Rigs {

    /** A small rig that reads without complaint. */
    static final String MARKET = """
            # Night market, two bodies.
            akin: 1
            production: {name: Night market, rate: 25, mains: 50 Hz, delivery: {picture: 1920x1080, encoding: bt1886}}
            match: {hero: A, tolerance: intercut}
            tolerances: {blur: 6 %}
            scenes:
              - {name: stalls, subject-distance: 2.4 m, lights: [tungsten], units: [A, B]}
            kit:
              filters: [ND 0.3, ND 0.6]
              lenses: [brindle-50]
            gear:
              bodies:
                heron:
                  name: Heron
                  mount: reed
                  iso: {from: 100, to: 12800}
                  shutter: {angles: {from: 1°, to: 360°, step: 0.1°}}
                  stabilisation: none
                  modes:
                    uhd: {picture: 3840x2160, area: 24.0x13.5 mm, rates: [25, 50], readout: 12 ms, profiles: [log], codecs: [inside], outputs: [sdi]}
                    hd: {picture: 1920x1080, area: 24.0x13.5 mm, rates: [25, 50]}
                  profiles:
                    log: {encoding: hlg, gamut: bt2020, iso-floor: 400, look: false}
                    look: {encoding: bt709, gamut: bt709, iso-floor: 100, look: true}
                  codecs:
                    inside: {kind: encoded, bits: 10, chroma: '4:2:2'}
                    proxy: {kind: encoded, bits: 8, chroma: '4:2:0'}
                  outputs:
                    sdi: {kind: encoded, bits: 10, chroma: '4:2:2', range: legal}
                    hdmi: {kind: encoded, bits: 8, chroma: '4:2:2', range: legal}
              lenses:
                brindle-50: {name: Brindle 50, mount: reed, focal: 50 mm, squeeze: 1}
                brindle-zoom: {name: Brindle Zoom, mount: reed, focal: 24 mm, focal-to: 70 mm}
              recorders:
                basket: {name: Basket, codecs: {intra: {kind: encoded, bits: 10, chroma: '4:2:2'}}, rates: [25]}
            units:
              A:
                body: heron
                mode: uhd
                profile: log
                codec: inside
                lens: {use: brindle-50, stop: T2.8}
                shutter: 180°
                iso: 800
                filters: [ND 0.6]
                white: 4300 K
              B:
                body: heron
                mode: uhd
                profile: log
                lens: {use: brindle-zoom, focal: 35 mm, stop: T4}
                shutter: 1/50
                iso: auto
                white: 5600 K
                recorder: {use: basket, output: sdi, codec: intra}
            """;

    private Rigs() {}
}
