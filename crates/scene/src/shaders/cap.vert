uniform mat4 view_projection;
uniform vec3 offset_m;
uniform vec3 origin_m;    // the plane's point nearest the ball's centre
uniform vec3 u_axis;
uniform vec3 v_axis;
in vec2 position;         // (u, v) in the plane, metres
out vec2 at_m;
void main() {
    at_m = position;
    vec3 place = origin_m + u_axis * position.x + v_axis * position.y + offset_m;
    gl_Position = view_projection * vec4(place, 1.0);
}
