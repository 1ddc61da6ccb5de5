// 0 a filled dot, 1 a quartered disc (centre of gravity), 2 an open circle, 3 a square,
// 4 a diamond, 5 an open diamond.
uniform vec3 ink;
uniform vec3 paper;
uniform float radius_px;
uniform float strength;
in vec2 at_px;
flat in float kind;
out vec4 out_colour;
void main() {
    float far = kind > 2.5 ? max(abs(at_px.x), abs(at_px.y)) / 0.86 : length(at_px);
    if (kind > 3.5) far = (abs(at_px.x) + abs(at_px.y)) / 1.05;
    float cover = 1.0 - smoothstep(radius_px - 0.5, radius_px + 0.5, far);
    float rim = smoothstep(radius_px - 2.5, radius_px - 1.5, far);
    float dark = 1.0;
    if (kind > 0.5 && kind < 1.5) dark = max(rim, step(0.0, at_px.x * at_px.y));
    else if (kind > 1.5 && kind < 2.5) dark = max(rim, 1.0 - smoothstep(radius_px * 0.3, radius_px * 0.3 + 1.0, far));
    else if (kind > 4.5) dark = rim;
    else dark = 1.0 - rim;
    out_colour = vec4(mix(paper, ink, dark), cover * strength);
}
