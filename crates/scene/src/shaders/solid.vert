uniform mat4 view_projection;
uniform vec3 offset_m;
in vec3 position;
in vec3 normal;
centroid out vec3 at_m;
out vec3 out_normal;
void main() {
    at_m = position;
    out_normal = normal;
    gl_Position = view_projection * vec4(position + offset_m, 1.0);
}
