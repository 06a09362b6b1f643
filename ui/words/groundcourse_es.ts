<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>Fields</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>nothing is built</source>
        <translation>no se construye nada</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Built here</source>
        <translation>Hecho aquí</translation>
    </message>
    <message>
        <source>Change edge %1 of %2</source>
        <translation>Cambiar borde %1 de %2</translation>
    </message>
    <message>
        <source>By the table</source>
        <translation>Según la tabla</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>Edge %1, %2</source>
        <translation>Borde %1, %2</translation>
    </message>
    <message>
        <source>Where something cuts in</source>
        <translation>Donde entra otro elemento</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Change %1 of %2</source>
        <translation>Cambiar %1 de %2</translation>
    </message>
    <message>
        <source>Paved area</source>
        <translation>Área pavimentada</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Alberca</translation>
    </message>
    <message>
        <source>Free-standing wall</source>
        <translation>Muro exento</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Muro</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Escalones</translation>
    </message>
    <message>
        <source>Building</source>
        <translation>Edificio</translation>
    </message>
    <message>
        <source>Pillar</source>
        <translation>Pilar</translation>
    </message>
    <message>
        <source>Keep-out</source>
        <translation>Vano</translation>
    </message>
    <message>
        <source>Kerb</source>
        <translation>Bordillo</translation>
    </message>
    <message>
        <source>Edging</source>
        <translation>Bordura</translation>
    </message>
    <message>
        <source>Restraint</source>
        <translation>Contención</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>Canaleta</translation>
    </message>
    <message>
        <source>Sleeve</source>
        <translation>Camisa</translation>
    </message>
    <message>
        <source>Pipe</source>
        <translation>Tubo</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Nivel</translation>
    </message>
    <message>
        <source>Feature</source>
        <translation>Elemento</translation>
    </message>
    <message>
        <source>Removal</source>
        <translation>Demolición</translation>
    </message>
    <message>
        <source>Site mark</source>
        <translation>Marca del sitio</translation>
    </message>
    <message>
        <source>Protection</source>
        <translation>Protección</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Cota</translation>
    </message>
    <message>
        <source>Site plan</source>
        <translation>Plano del sitio</translation>
    </message>
    <message>
        <source>Level book</source>
        <translation>Libreta de nivel</translation>
    </message>
    <message>
        <source>Base line</source>
        <translation>Línea base</translation>
    </message>
    <message>
        <source>Taped measures</source>
        <translation>Medidas con cinta</translation>
    </message>
    <message>
        <source>Change %1 of the job</source>
        <translation>Cambiar %1 del trabajo</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Rename %1</source>
        <translation>Renombrar %1</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Feet and inches</source>
        <translation>Pies y pulgadas</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>Metros</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>%1, past the edge</source>
        <translation>%1, más allá del borde</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Relleno</translation>
    </message>
    <message>
        <source>Down to</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Take this filler out</source>
        <translation>Quitar este relleno</translation>
    </message>
    <message>
        <source>Add a filler</source>
        <translation>Agregar relleno</translation>
    </message>
    <message>
        <source>Build-up</source>
        <translation>Capas</translation>
    </message>
    <message>
        <source>Joint fill, from the top</source>
        <translation>Relleno de junta, desde arriba</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>Vehicles drive on it</source>
        <translation>Pasan vehículos</translation>
    </message>
    <message>
        <source>Area as taped on site</source>
        <translation>Área medida en el sitio</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Unit, %1</source>
        <translation>Pieza, %1</translation>
    </message>
    <message>
        <source>Runs along</source>
        <translation>Sigue a</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Soldier, across</source>
        <translation>A tizón, a través</translation>
    </message>
    <message>
        <source>Sailor, along</source>
        <translation>A soga, a lo largo</translation>
    </message>
    <message>
        <source>Mitre</source>
        <translation>A inglete</translation>
    </message>
    <message>
        <source>Butt, by turns</source>
        <translation>A tope, alternado</translation>
    </message>
    <message>
        <source>Block in the corner</source>
        <translation>Bloque en la esquina</translation>
    </message>
    <message>
        <source>Outer edge</source>
        <translation>Borde exterior</translation>
    </message>
    <message>
        <source>Outer edge and islands</source>
        <translation>Borde exterior e islas</translation>
    </message>
    <message>
        <source>Islands only</source>
        <translation>Solo islas</translation>
    </message>
    <message>
        <source>Change border of %1</source>
        <translation>Cambiar borde de %1</translation>
    </message>
    <message>
        <source>Lies as</source>
        <translation>Colocación</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Esquinas</translation>
    </message>
    <message>
        <source>Along</source>
        <translation>A lo largo de</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Junta</translation>
    </message>
    <message>
        <source>Move one course in</source>
        <translation>Mover una hilada adentro</translation>
    </message>
    <message>
        <source>Take this course out</source>
        <translation>Quitar esta hilada</translation>
    </message>
    <message>
        <source>Take a border course out of %1</source>
        <translation>Quitar una hilada de borde de %1</translation>
    </message>
    <message>
        <source>Border course %1, from the outside</source>
        <translation>Hilada de borde %1, desde afuera</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Aparejo</translation>
    </message>
    <message>
        <source>Start point</source>
        <translation>Punto de arranque</translation>
    </message>
    <message>
        <source>East</source>
        <translation>Este</translation>
    </message>
    <message>
        <source>North</source>
        <translation>Norte</translation>
    </message>
    <message>
        <source>Add a border course</source>
        <translation>Agregar hilada de borde</translation>
    </message>
    <message>
        <source>Add a border course to %1</source>
        <translation>Agregar hilada de borde a %1</translation>
    </message>
    <message>
        <source>Border courses</source>
        <translation>Hiladas de borde</translation>
    </message>
    <message>
        <source>Change %1 of %2 elements</source>
        <translation>Cambiar %1 de %2 elementos</translation>
    </message>
    <message>
        <source>Take all %1 out</source>
        <translation>Quitar los %1</translation>
    </message>
    <message>
        <source>Take %1 elements out</source>
        <translation>Quitar %1 elementos</translation>
    </message>
    <message>
        <source>Finished surface</source>
        <translation>Superficie terminada</translation>
    </message>
    <message>
        <source>Falls away from edges</source>
        <translation>Baja desde los bordes</translation>
    </message>
    <message>
        <source>One plane</source>
        <translation>Un solo plano</translation>
    </message>
    <message>
        <source>Two falls from a line</source>
        <translation>Dos pendientes desde una línea</translation>
    </message>
    <message>
        <source>Through finished levels</source>
        <translation>Por niveles terminados</translation>
    </message>
    <message>
        <source>Along a line with heights</source>
        <translation>A lo largo de una línea con alturas</translation>
    </message>
    <message>
        <source>Away from</source>
        <translation>Baja desde</translation>
    </message>
    <message>
        <source>Edge, empty: all of it</source>
        <translation>Borde, vacío: todo</translation>
    </message>
    <message>
        <source>Height there</source>
        <translation>Altura ahí</translation>
    </message>
    <message>
        <source>At its end</source>
        <translation>En su final</translation>
    </message>
    <message>
        <source>Starts lower by</source>
        <translation>Arranca más bajo</translation>
    </message>
    <message>
        <source>Fall</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>Take this one out</source>
        <translation>Quitar esta</translation>
    </message>
    <message>
        <source>Falls</source>
        <translation>Pendientes</translation>
    </message>
    <message>
        <source>Falls away from, %1</source>
        <translation>Baja desde, %1</translation>
    </message>
    <message>
        <source>Add what it falls away from</source>
        <translation>Agregar desde dónde baja</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Of the point, east</source>
        <translation>Del punto, este</translation>
    </message>
    <message>
        <source>Of the point, north</source>
        <translation>Del punto, norte</translation>
    </message>
    <message>
        <source>Falls towards</source>
        <translation>Baja hacia</translation>
    </message>
    <message>
        <source>Height at the line’s start</source>
        <translation>Altura al inicio de la línea</translation>
    </message>
    <message>
        <source>At the line’s end</source>
        <translation>Al final de la línea</translation>
    </message>
    <message>
        <source>Fall on the left</source>
        <translation>Pendiente a la izquierda</translation>
    </message>
    <message>
        <source>Fall on the right</source>
        <translation>Pendiente a la derecha</translation>
    </message>
    <message>
        <source>%1: along the line</source>
        <translation>%1: a lo largo de la línea</translation>
    </message>
    <message>
        <source>%1: height</source>
        <translation>%1: altura</translation>
    </message>
    <message>
        <source>Add a height</source>
        <translation>Agregar altura</translation>
    </message>
    <message>
        <source>Heights</source>
        <translation>Alturas</translation>
    </message>
    <message>
        <source>Fall across, to the right</source>
        <translation>Pendiente transversal, a la derecha</translation>
    </message>
    <message>
        <source>Finished levels that name %1</source>
        <translation>Niveles terminados que nombran %1</translation>
    </message>
    <message>
        <source>Use and water</source>
        <translation>Uso y agua</translation>
    </message>
    <message>
        <source>Access route, falls have limits</source>
        <translation>Ruta accesible, pendientes con límite</translation>
    </message>
    <message>
        <source>Water goes to</source>
        <translation>El agua va a</translation>
    </message>
    <message>
        <source>Coping</source>
        <translation>Albardilla</translation>
    </message>
    <message>
        <source>Coping unit</source>
        <translation>Pieza de albardilla</translation>
    </message>
    <message>
        <source>Overhang</source>
        <translation>Vuelo</translation>
    </message>
    <message>
        <source>On curves</source>
        <translation>En curvas</translation>
    </message>
    <message>
        <source>Least cutting</source>
        <translation>Corte mínimo</translation>
    </message>
    <message>
        <source>Uncut, wedge joints</source>
        <translation>Sin corte, juntas en cuña</translation>
    </message>
    <message>
        <source>Tapered by cuts</source>
        <translation>Cortadas en cuña</translation>
    </message>
    <message>
        <source>Radius pieces</source>
        <translation>Piezas de radio</translation>
    </message>
    <message>
        <source>Top of coping</source>
        <translation>Cara superior de albardilla</translation>
    </message>
    <message>
        <source>Stone round the shell</source>
        <translation>Piedra alrededor del vaso</translation>
    </message>
    <message>
        <source>Stone</source>
        <translation>Piedra</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Concrete collar</source>
        <translation>Collar de concreto</translation>
    </message>
    <message>
        <source>Concrete</source>
        <translation>Concreto</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Varilla</translation>
    </message>
    <message>
        <source>Bar ring %1, out from the shell</source>
        <translation>Anillo de varilla %1, desde el vaso</translation>
    </message>
    <message>
        <source>Add a bar ring</source>
        <translation>Agregar anillo</translation>
    </message>
    <message>
        <source>Bar rings</source>
        <translation>Anillos de varilla</translation>
    </message>
    <message>
        <source>Take the last ring out</source>
        <translation>Quitar el último anillo</translation>
    </message>
    <message>
        <source>Conductor ring</source>
        <translation>Anillo conductor</translation>
    </message>
    <message>
        <source>Conductor</source>
        <translation>Conductor</translation>
    </message>
    <message>
        <source>Out from the shell</source>
        <translation>Distancia al vaso</translation>
    </message>
    <message>
        <source>Ties</source>
        <translation>Amarres</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Vaso</translation>
    </message>
    <message>
        <source>Shell thickness</source>
        <translation>Espesor del vaso</translation>
    </message>
    <message>
        <source>Water’s edge measured as built</source>
        <translation>Orilla del agua medida ya construida</translation>
    </message>
    <message>
        <source>Concrete footing</source>
        <translation>Zapata de concreto</translation>
    </message>
    <message>
        <source>Haunch</source>
        <translation>Cuña de concreto</translation>
    </message>
    <message>
        <source>Weeps</source>
        <translation>Lloraderos</translation>
    </message>
    <message>
        <source>Weep</source>
        <translation>Lloradero</translation>
    </message>
    <message>
        <source>Apart</source>
        <translation>Separación</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>Clavos</translation>
    </message>
    <message>
        <source>Spike</source>
        <translation>Clavo</translation>
    </message>
    <message>
        <source>Apart on curves</source>
        <translation>Separación en curvas</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Unit on curves</source>
        <translation>Pieza en curvas</translation>
    </message>
    <message>
        <source>Paving lies</source>
        <translation>Adoquines</translation>
    </message>
    <message>
        <source>Left of the line</source>
        <translation>A la izquierda de la línea</translation>
    </message>
    <message>
        <source>Right of the line</source>
        <translation>A la derecha de la línea</translation>
    </message>
    <message>
        <source>Above the paving, 0: flush</source>
        <translation>Sobre los adoquines, 0: a ras</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artículo</translation>
    </message>
    <message>
        <source>Width at the surface</source>
        <translation>Ancho en la superficie</translation>
    </message>
    <message>
        <source>Levels</source>
        <translation>Niveles</translation>
    </message>
    <message>
        <source>Invert at the start</source>
        <translation>Arrastre al inicio</translation>
    </message>
    <message>
        <source>Ground at the outlet</source>
        <translation>Terreno en la salida</translation>
    </message>
    <message>
        <source>Where it goes</source>
        <translation>Adónde va</translation>
    </message>
    <message>
        <source>Into</source>
        <translation>Descarga en</translation>
    </message>
    <message>
        <source>Joined by</source>
        <translation>Unido con</translation>
    </message>
    <message>
        <source>Outlet</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Bend</source>
        <translation>Codo</translation>
    </message>
    <message>
        <source>Trench</source>
        <translation>Zanja</translation>
    </message>
    <message>
        <source>Build-up of the trench</source>
        <translation>Capas de la zanja</translation>
    </message>
    <message>
        <source>Closed by</source>
        <translation>Se cierra con</translation>
    </message>
    <message>
        <source>Buried service</source>
        <translation>Servicio enterrado</translation>
    </message>
    <message>
        <source>Overhead line</source>
        <translation>Línea aérea</translation>
    </message>
    <message>
        <source>Lot line</source>
        <translation>Lindero</translation>
    </message>
    <message>
        <source>Setback</source>
        <translation>Retiro</translation>
    </message>
    <message>
        <source>Easement</source>
        <translation>Servidumbre</translation>
    </message>
    <message>
        <source>Flood line</source>
        <translation>Línea de inundación</translation>
    </message>
    <message>
        <source>Pool barrier</source>
        <translation>Barrera de alberca</translation>
    </message>
    <message>
        <source>Septic field</source>
        <translation>Campo séptico</translation>
    </message>
    <message>
        <source>Well</source>
        <translation>Pozo</translation>
    </message>
    <message>
        <source>Gate</source>
        <translation>Puerta</translation>
    </message>
    <message>
        <source>Way in</source>
        <translation>Acceso</translation>
    </message>
    <message>
        <source>Drop spot</source>
        <translation>Lugar de descarga</translation>
    </message>
    <message>
        <source>Downspout</source>
        <translation>Bajante</translation>
    </message>
    <message>
        <source>Asphalt</source>
        <translation>Asfalto</translation>
    </message>
    <message>
        <source>Unit paving</source>
        <translation>Adoquines</translation>
    </message>
    <message>
        <source>Sod</source>
        <translation>Pasto</translation>
    </message>
    <message>
        <source>Stump</source>
        <translation>Tocón</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Planter</source>
        <translation>Jardinera</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Árbol</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Inlet</source>
        <translation>Entrada de agua</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Cara</translation>
    </message>
    <message>
        <source>Footing below the ground</source>
        <translation>Zapata bajo el terreno</translation>
    </message>
    <message>
        <source>Floor inside</source>
        <translation>Piso interior</translation>
    </message>
    <message>
        <source>Lowest sill</source>
        <translation>Umbral más bajo</translation>
    </message>
    <message>
        <source>Lowest weep</source>
        <translation>Lloradero más bajo</translation>
    </message>
    <message>
        <source>Bottom of siding</source>
        <translation>Parte baja del forro</translation>
    </message>
    <message>
        <source>Lowest vent</source>
        <translation>Rejilla más baja</translation>
    </message>
    <message>
        <source>Trunk, across</source>
        <translation>Tronco, diámetro</translation>
    </message>
    <message>
        <source>Built here of blocks</source>
        <translation>Hecho aquí de bloques</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Bloque</translation>
    </message>
    <message>
        <source>Cap</source>
        <translation>Tapa</translation>
    </message>
    <message>
        <source>Adhesive</source>
        <translation>Adhesivo</translation>
    </message>
    <message>
        <source>Height above the ground</source>
        <translation>Altura sobre el terreno</translation>
    </message>
    <message>
        <source>Courses below ground</source>
        <translation>Hiladas bajo tierra</translation>
    </message>
    <message>
        <source>Base build-up</source>
        <translation>Capas de la base</translation>
    </message>
    <message>
        <source>Ground as it lies</source>
        <translation>Terreno actual</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Terminado</translation>
    </message>
    <message>
        <source>Bench mark</source>
        <translation>Banco de nivel</translation>
    </message>
    <message>
        <source>Invert</source>
        <translation>Nivel de arrastre</translation>
    </message>
    <message>
        <source>Height, empty: from the level book</source>
        <translation>Altura, vacía: de la libreta de nivel</translation>
    </message>
    <message>
        <source>Of the area</source>
        <translation>Del área</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Water over an edge</source>
        <translation>Agua sobre un borde</translation>
    </message>
    <message>
        <source>Length of the edge</source>
        <translation>Longitud del borde</translation>
    </message>
    <message>
        <source>Depth of water on it</source>
        <translation>Tirante de agua encima</translation>
    </message>
    <message>
        <source>Ends that draw in</source>
        <translation>Extremos que contraen</translation>
    </message>
    <message>
        <source>Fate</source>
        <translation>Destino</translation>
    </message>
    <message>
        <source>Hauled away</source>
        <translation>Se acarrea fuera</translation>
    </message>
    <message>
        <source>Used here again</source>
        <translation>Se reutiliza aquí</translation>
    </message>
    <message>
        <source>Stays, built on</source>
        <translation>Se queda, se construye sobre él</translation>
    </message>
    <message>
        <source>Steel in it</source>
        <translation>Con acero</translation>
    </message>
    <message>
        <source>Breaks on the way</source>
        <translation>Se rompe al moverlo</translation>
    </message>
    <message>
        <source>Top, empty: the ground</source>
        <translation>Arriba, vacío: el terreno</translation>
    </message>
    <message>
        <source>Above the ground</source>
        <translation>Sobre el terreno</translation>
    </message>
    <message>
        <source>Clear width</source>
        <translation>Ancho libre</translation>
    </message>
    <message>
        <source>Roof that it drains</source>
        <translation>Techo que desagua</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texto</translation>
    </message>
    <message>
        <source>Offsets along a chord, apart</source>
        <translation>Normales a la cuerda, separación</translation>
    </message>
    <message>
        <source>%1: along the wall</source>
        <translation>%1: a lo largo del muro</translation>
    </message>
    <message>
        <source>Give heights</source>
        <translation>Dar alturas</translation>
    </message>
    <message>
        <source>Take the last height out</source>
        <translation>Quitar la última altura</translation>
    </message>
    <message>
        <source>Cap overhang</source>
        <translation>Vuelo de la tapa</translation>
    </message>
    <message>
        <source>Glued between courses</source>
        <translation>Pegado entre hiladas</translation>
    </message>
    <message>
        <source>Block on curves</source>
        <translation>Bloque en curvas</translation>
    </message>
    <message>
        <source>Half block</source>
        <translation>Medio bloque</translation>
    </message>
    <message>
        <source>Corner block</source>
        <translation>Bloque de esquina</translation>
    </message>
    <message>
        <source>End block</source>
        <translation>Bloque de extremo</translation>
    </message>
    <message>
        <source>Cap on curves</source>
        <translation>Tapa en curvas</translation>
    </message>
    <message>
        <source>Thickness, 0: of the block</source>
        <translation>Espesor, 0: el del bloque</translation>
    </message>
    <message>
        <source>Shows</source>
        <translation>Queda a la vista</translation>
    </message>
    <message>
        <source>Dies into the ground</source>
        <translation>Muere en el terreno</translation>
    </message>
    <message>
        <source>Stands against something</source>
        <translation>Topa con algo</translation>
    </message>
    <message>
        <source>Stands already</source>
        <translation>Ya existe</translation>
    </message>
    <message>
        <source>Free standing, two faces</source>
        <translation>Exento, dos caras</translation>
    </message>
    <message>
        <source>Body lies</source>
        <translation>El cuerpo queda</translation>
    </message>
    <message>
        <source>At the start</source>
        <translation>Al inicio</translation>
    </message>
    <message>
        <source>At the end</source>
        <translation>Al final</translation>
    </message>
    <message>
        <source>Top above the ground in front</source>
        <translation>Corona sobre el terreno al frente</translation>
    </message>
    <message>
        <source>Keeps its height</source>
        <translation>Mantiene su altura</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Corona</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Finished top</source>
        <translation>Corona terminada</translation>
    </message>
    <message>
        <source>Ground in front</source>
        <translation>Terreno al frente</translation>
    </message>
    <message>
        <source>Ground behind</source>
        <translation>Terreno detrás</translation>
    </message>
    <message>
        <source>Stone base and drainage stone</source>
        <translation>Base de piedra y piedra de drenaje</translation>
    </message>
    <message>
        <source>Stone behind</source>
        <translation>Piedra detrás</translation>
    </message>
    <message>
        <source>Its depth, front to back</source>
        <translation>Su fondo, de frente a atrás</translation>
    </message>
    <message>
        <source>Earth over the stone</source>
        <translation>Tierra sobre la piedra</translation>
    </message>
    <message>
        <source>Stone in the voids</source>
        <translation>Piedra en los huecos</translation>
    </message>
    <message>
        <source>Fabric behind</source>
        <translation>Geotextil detrás</translation>
    </message>
    <message>
        <source>Fill behind the stone</source>
        <translation>Relleno tras la piedra</translation>
    </message>
    <message>
        <source>Pipe behind</source>
        <translation>Tubo detrás</translation>
    </message>
    <message>
        <source>Outlet pipe</source>
        <translation>Tubo de salida</translation>
    </message>
    <message>
        <source>Length of one outlet</source>
        <translation>Longitud de una salida</translation>
    </message>
    <message>
        <source>Drained by a run</source>
        <translation>Drenado por un tramo</translation>
    </message>
    <message>
        <source>Built of</source>
        <translation>Hecho de</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Cómo está</translation>
    </message>
    <message>
        <source>Base and drainage</source>
        <translation>Base y drenaje</translation>
    </message>
    <message>
        <source>Flight</source>
        <translation>Tramo</translation>
    </message>
    <message>
        <source>Step or tread</source>
        <translation>Escalón o huella</translation>
    </message>
    <message>
        <source>Riser block</source>
        <translation>Bloque contrahuella</translation>
    </message>
    <message>
        <source>Rise, foot to landing</source>
        <translation>Desnivel, del pie al descanso</translation>
    </message>
    <message>
        <source>Risers, 0: shared out</source>
        <translation>Contrahuellas, 0: repartidas</translation>
    </message>
    <message>
        <source>Direction up</source>
        <translation>Dirección de subida</translation>
    </message>
    <message>
        <source>Fall of a tread</source>
        <translation>Pendiente de huella</translation>
    </message>
    <message>
        <source>Lies on the one below by</source>
        <translation>Apoyo sobre el de abajo</translation>
    </message>
    <message>
        <source>Nose past the riser</source>
        <translation>Vuelo de la nariz</translation>
    </message>
    <message>
        <source>On a public way</source>
        <translation>En vía pública</translation>
    </message>
    <message>
        <source>Build-up under each tread</source>
        <translation>Capas bajo cada huella</translation>
    </message>
    <message>
        <source>Walls beside the steps</source>
        <translation>Muros junto a los escalones</translation>
    </message>
    <message>
        <source>On the left, going up</source>
        <translation>A la izquierda, subiendo</translation>
    </message>
    <message>
        <source>On the right, going up</source>
        <translation>A la derecha, subiendo</translation>
    </message>
    <message>
        <source>Above the tread</source>
        <translation>Sobre la huella</translation>
    </message>
    <message>
        <source>Search in the list</source>
        <translation>Buscar en la lista</translation>
    </message>
    <message>
        <source>Type to search</source>
        <translation>Escriba para buscar</translation>
    </message>
    <message>
        <source>What can be chosen</source>
        <translation>Qué se puede elegir</translation>
    </message>
    <message>
        <source>In this job</source>
        <translation>En este trabajo</translation>
    </message>
    <message>
        <source>From the book</source>
        <translation>Del libro</translation>
    </message>
    <message>
        <source>This is no number: write it with figures, and a dot for decimals</source>
        <translation>No es un número: escríbalo con cifras, y un punto para los decimales</translation>
    </message>
    <message>
        <source>Only whole numbers can stand here</source>
        <translation>Aquí solo van números enteros</translation>
    </message>
    <message>
        <source>It must lie between %1 and %2</source>
        <translation>Debe estar entre %1 y %2</translation>
    </message>
    <message>
        <source>This can’t be below 0</source>
        <translation>No puede ser menor que 0</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>by others</source>
        <translation>por otros</translation>
    </message>
    <message>
        <source>%1 a %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>Section, to scale</source>
        <translation>Sección, a escala</translation>
    </message>
    <message>
        <source>later</source>
        <translation>después</translation>
    </message>
    <message>
        <source>Net area</source>
        <translation>Área neta</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Como se dibujó</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Borde</translation>
    </message>
    <message>
        <source>Whole units</source>
        <translation>Adoquines enteros</translation>
    </message>
    <message>
        <source>Cut units</source>
        <translation>Adoquines cortados</translation>
    </message>
    <message>
        <source>Bought for cuts</source>
        <translation>Comprado para cortes</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Water’s edge</source>
        <translation>Orilla del agua</translation>
    </message>
    <message>
        <source>Back of coping</source>
        <translation>Atrás de albardilla</translation>
    </message>
    <message>
        <source>Coping pieces</source>
        <translation>Piezas de albardilla</translation>
    </message>
    <message>
        <source>Cut pieces</source>
        <translation>Piezas cortadas</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Height with cap</source>
        <translation>Altura con tapa</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Bloques</translation>
    </message>
    <message>
        <source>Cut blocks</source>
        <translation>Bloques cortados</translation>
    </message>
    <message>
        <source>Caps</source>
        <translation>Tapas</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Área</translation>
    </message>
    <message>
        <source>Risers</source>
        <translation>Contrahuellas</translation>
    </message>
    <message>
        <source>Each riser</source>
        <translation>Cada contrahuella</translation>
    </message>
    <message>
        <source>Tread</source>
        <translation>Huella</translation>
    </message>
    <message>
        <source>Step units</source>
        <translation>Piezas de escalón</translation>
    </message>
    <message>
        <source>Centre line</source>
        <translation>Línea de centro</translation>
    </message>
    <message>
        <source>Kerb units</source>
        <translation>Piezas de bordillo</translation>
    </message>
    <message>
        <source>Footing</source>
        <translation>Zapata</translation>
    </message>
    <message>
        <source>Laid length</source>
        <translation>Longitud colocada</translation>
    </message>
    <message>
        <source>In place</source>
        <translation>En su sitio</translation>
    </message>
    <message>
        <source>Courses</source>
        <translation>Hiladas</translation>
    </message>
    <message>
        <source>Fewest cuts</source>
        <translation>Menos cortes</translation>
    </message>
    <message>
        <source>No slivers</source>
        <translation>Sin astillas</translation>
    </message>
    <message>
        <source>Survives the site</source>
        <translation>Resiste la obra</translation>
    </message>
    <message>
        <source>Slivers</source>
        <translation>Astillas</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Quitarlo</translation>
    </message>
    <message>
        <source>Change what is taxed</source>
        <translation>Cambiar lo gravado</translation>
    </message>
    <message>
        <source>Overhead</source>
        <translation>Gastos generales</translation>
    </message>
    <message>
        <source>Contingency</source>
        <translation>Imprevistos</translation>
    </message>
    <message>
        <source>Profit</source>
        <translation>Utilidad</translation>
    </message>
    <message>
        <source>Profit is</source>
        <translation>La utilidad es</translation>
    </message>
    <message>
        <source>a markup, of the cost</source>
        <translation>un recargo, sobre el costo</translation>
    </message>
    <message>
        <source>a margin, of the price</source>
        <translation>un margen, del precio</translation>
    </message>
    <message>
        <source>Each on the sum before it</source>
        <translation>Cada una sobre la suma anterior</translation>
    </message>
    <message>
        <source>Round up to</source>
        <translation>Redondear hacia arriba a</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Impuesto</translation>
    </message>
    <message>
        <source>On top of the direct cost</source>
        <translation>Sobre el costo directo</translation>
    </message>
    <message>
        <source>Tax, and what is taxed</source>
        <translation>Impuesto y lo gravado</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Condición</translation>
    </message>
    <message>
        <source>Hours times</source>
        <translation>Horas por</translation>
    </message>
    <message>
        <source>In</source>
        <translation>En</translation>
    </message>
    <message>
        <source>all stages</source>
        <translation>todas las etapas</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Condition %1</source>
        <translation>Condición %1</translation>
    </message>
    <message>
        <source>Add a condition on the hours</source>
        <translation>Añadir una condición a las horas</translation>
    </message>
    <message>
        <source>Narrow way in</source>
        <translation>Entrada estrecha</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>Precio de uno</translation>
    </message>
    <message>
        <source>Nothing, on purpose</source>
        <translation>Nada, a propósito</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Línea %1</translation>
    </message>
    <message>
        <source>Add a line</source>
        <translation>Añadir una línea</translation>
    </message>
    <message>
        <source>The quote</source>
        <translation>La cotización</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Valid for days</source>
        <translation>Válida por días</translation>
    </message>
    <message>
        <source>Payment %1</source>
        <translation>Pago %1</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Para qué</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Parte</translation>
    </message>
    <message>
        <source>Due with</source>
        <translation>Vence con</translation>
    </message>
    <message>
        <source>signing</source>
        <translation>la firma</translation>
    </message>
    <message>
        <source>Add a payment</source>
        <translation>Añadir un pago</translation>
    </message>
    <message>
        <source>On signing</source>
        <translation>A la firma</translation>
    </message>
    <message>
        <source>Unit price %1</source>
        <translation>Precio unitario %1</translation>
    </message>
    <message>
        <source>Of what is not seen</source>
        <translation>De lo que no se ve</translation>
    </message>
    <message>
        <source>Counted on</source>
        <translation>Se cuenta con</translation>
    </message>
    <message>
        <source>Add a unit price</source>
        <translation>Añadir un precio unitario</translation>
    </message>
    <message>
        <source>Rock dug out</source>
        <translation>Roca excavada</translation>
    </message>
    <message>
        <source>Words of the quote</source>
        <translation>Textos de la cotización</translation>
    </message>
    <message>
        <source>Basis of the estimate</source>
        <translation>Base del presupuesto</translation>
    </message>
    <message>
        <source>Terms</source>
        <translation>Condiciones</translation>
    </message>
    <message>
        <source>Cancellation notice</source>
        <translation>Aviso de cancelación</translation>
    </message>
    <message>
        <source>Statement %1</source>
        <translation>Declaración %1</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es algo</translation>
    </message>
    <message>
        <source>not in the price</source>
        <translation>no incluido en el precio</translation>
    </message>
    <message>
        <source>taken for granted</source>
        <translation>dado por supuesto</translation>
    </message>
    <message>
        <source>Struck out</source>
        <translation>Tachada</translation>
    </message>
    <message>
        <source>Add a statement</source>
        <translation>Añadir una declaración</translation>
    </message>
    <message>
        <source>This takes an amount of money, such as 12.50</source>
        <translation>Aquí va una suma de dinero, como 12.50</translation>
    </message>
    <message>
        <source>This takes an amount with at most %1 decimals, up to 10 million</source>
        <translation>Aquí va una suma con %1 decimales como máximo, hasta 10 millones</translation>
    </message>
    <message>
        <source>What every estimate forgets</source>
        <translation>Lo que todo presupuesto olvida</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>sin revisar</translation>
    </message>
    <message>
        <source>a line</source>
        <translation>una línea</translation>
    </message>
    <message>
        <source>nothing, on purpose</source>
        <translation>nada, a propósito</translation>
    </message>
</context>
<context>
    <name>PriceWords</name>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Trucking</source>
        <translation>Fletes</translation>
    </message>
    <message>
        <source>Subcontract</source>
        <translation>Subcontrato</translation>
    </message>
    <message>
        <source>Allowances</source>
        <translation>Provisiones</translation>
    </message>
    <message>
        <source>Fees</source>
        <translation>Tarifas</translation>
    </message>
    <message>
        <source>Price before tax</source>
        <translation>Precio sin impuesto</translation>
    </message>
    <message>
        <source>Total with tax</source>
        <translation>Total con impuesto</translation>
    </message>
    <message>
        <source>What stands over the cost</source>
        <translation>Lo que supera al costo</translation>
    </message>
    <message>
        <source>%1 of the cost (markup) is %2 of the price (margin)</source>
        <translation>%1 del costo (recargo) es %2 del precio (margen)</translation>
    </message>
    <message>
        <source>with: %1</source>
        <translation>con: %1</translation>
    </message>
    <message>
        <source>on signing</source>
        <translation>a la firma</translation>
    </message>
</context>
<context>
    <name>QDialog</name>
    <message>
        <source>Measuring in</source>
        <translation>Toma de medidas</translation>
    </message>
</context>
<context>
    <name>SitePlanFile</name>
    <message>
        <source>the file has more than %1 million bytes</source>
        <translation>el archivo tiene más de %1 millones de bytes</translation>
    </message>
    <message>
        <source>save the plan with fewer pixels</source>
        <translation>guarde el plano con menos píxeles</translation>
    </message>
    <message>
        <source>there are no outlines in the file</source>
        <translation>no hay contornos en el archivo</translation>
    </message>
    <message>
        <source>save the plan with its lines, or as a picture</source>
        <translation>guarde el plano con sus líneas, o como imagen</translation>
    </message>
    <message>
        <source>the file is no picture, PDF or outline that can lie under a plan</source>
        <translation>el archivo no es una imagen, un PDF ni un contorno que pueda ir bajo un plano</translation>
    </message>
    <message>
        <source>save it as PNG, JPEG, PDF, GeoJSON or DXF</source>
        <translation>guárdelo como PNG, JPEG, PDF, GeoJSON o DXF</translation>
    </message>
    <message>
        <source>the file can&apos;t be opened</source>
        <translation>no se puede abrir el archivo</translation>
    </message>
    <message>
        <source>look at its name and whether you may read it</source>
        <translation>revise su nombre y si tiene permiso de leerlo</translation>
    </message>
    <message>
        <source>save it anew as a PNG</source>
        <translation>guárdelo de nuevo como PNG</translation>
    </message>
    <message>
        <source>the picture can&apos;t be read</source>
        <translation>no se puede leer la imagen</translation>
    </message>
    <message>
        <source>the picture is %1 × %2 pixels, and at most %3 million can be shown</source>
        <translation>la imagen es de %1 × %2 píxeles, y se pueden mostrar a lo más %3 millones</translation>
    </message>
    <message>
        <source>the picture can&apos;t be read to its end</source>
        <translation>no se puede leer la imagen hasta el final</translation>
    </message>
    <message>
        <source>save the page as a PNG, or print it to a new PDF</source>
        <translation>guarde la página como PNG, o imprímala en un PDF nuevo</translation>
    </message>
    <message>
        <source>the page takes too long to draw</source>
        <translation>la página tarda demasiado en dibujarse</translation>
    </message>
    <message>
        <source>the PDF is locked with a password</source>
        <translation>el PDF está protegido con contraseña</translation>
    </message>
    <message>
        <source>save it without one</source>
        <translation>guárdelo sin ella</translation>
    </message>
    <message>
        <source>the page takes too much memory to draw</source>
        <translation>la página ocupa demasiada memoria para dibujarse</translation>
    </message>
    <message>
        <source>the PDF can&apos;t be read</source>
        <translation>no se puede leer el PDF</translation>
    </message>
    <message>
        <source>pages of a PDF are drawn by poppler-utils, which is not here</source>
        <translation>las páginas de un PDF las dibuja poppler-utils, que no está aquí</translation>
    </message>
    <message>
        <source>install poppler-utils, or save the page as a PNG</source>
        <translation>instale poppler-utils, o guarde la página como PNG</translation>
    </message>
    <message>
        <source>there is no room to unpack the PDF</source>
        <translation>no hay espacio para abrir el PDF</translation>
    </message>
    <message>
        <source>make room on the disk</source>
        <translation>libere espacio en el disco</translation>
    </message>
    <message>
        <source>there is no page %1: the PDF has %2</source>
        <translation>no hay página %1: el PDF tiene %2</translation>
    </message>
    <message>
        <source>choose one of its pages</source>
        <translation>elija una de sus páginas</translation>
    </message>
</context>
<context>
    <name>Stage</name>
    <message>
        <source>day %1</source>
        <translation>día %1</translation>
    </message>
    <message>
        <source>days %1 to %2</source>
        <translation>días %1 a %2</translation>
    </message>
</context>
<context>
    <name>Takeoff</name>
    <message>
        <source>by others</source>
        <translation>por otros</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>in whole ones</source>
        <translation>en enteros</translation>
    </message>
    <message>
        <source>the greatest of</source>
        <translation>el mayor de</translation>
    </message>
    <message>
        <source>the least of</source>
        <translation>el menor de</translation>
    </message>
    <message>
        <source>multiplied</source>
        <translation>multiplicado</translation>
    </message>
    <message>
        <source>divided</source>
        <translation>dividido</translation>
    </message>
    <message>
        <source>what is left</source>
        <translation>lo que queda</translation>
    </message>
    <message>
        <source>together</source>
        <translation>en total</translation>
    </message>
    <message>
        <source>ordered by the %1 of %2</source>
        <translation>se pide por %1 de %2</translation>
    </message>
    <message>
        <source>ordered by the %1 %2</source>
        <translation>se pide de a %1 %2</translation>
    </message>
    <message>
        <source>ordered in whole pieces</source>
        <translation>se pide por piezas enteras</translation>
    </message>
    <message>
        <source>ordered in whole %1</source>
        <translation>se pide en enteros: %1</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>pedido</translation>
    </message>
</context>
<context>
    <name>Total</name>
    <message>
        <source>1 line has no price</source>
        <translation>1 renglón sin precio</translation>
    </message>
    <message>
        <source>%1 lines have no price</source>
        <translation>%1 renglones sin precio</translation>
    </message>
    <message>
        <source>1 problem to solve</source>
        <translation>1 problema por resolver</translation>
    </message>
    <message>
        <source>%1 problems to solve</source>
        <translation>%1 problemas por resolver</translation>
    </message>
    <message>
        <source>Not final: %1.</source>
        <translation>No es definitivo: %1.</translation>
    </message>
    <message>
        <source>crew of %1</source>
        <translation>cuadrilla de %1</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
</context>
<context>
    <name>actions</name>
    <message>
        <source>New job</source>
        <translation>Trabajo nuevo</translation>
    </message>
    <message>
        <source>Open the demo job</source>
        <translation>Abrir el trabajo de muestra</translation>
    </message>
    <message>
        <source>Bring in a job file…</source>
        <translation>Traer un archivo de trabajo…</translation>
    </message>
    <message>
        <source>Write a job file…</source>
        <translation>Escribir un archivo de trabajo…</translation>
    </message>
    <message>
        <source>Bring in a site plan…</source>
        <translation>Traer un plano del sitio…</translation>
    </message>
    <message>
        <source>Bring in outlines as elements…</source>
        <translation>Traer contornos como elementos…</translation>
    </message>
    <message>
        <source>Measuring in…</source>
        <translation>Toma de medidas…</translation>
    </message>
    <message>
        <source>Settings…</source>
        <translation>Ajustes…</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Select all</source>
        <translation>Elegir todo</translation>
    </message>
    <message>
        <source>Select what lies below</source>
        <translation>Elegir lo que está debajo</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Find an element or an action…</source>
        <translation>Buscar un elemento o una acción…</translation>
    </message>
    <message>
        <source>Fewest cuts</source>
        <translation>Menos cortes</translation>
    </message>
    <message>
        <source>No slivers</source>
        <translation>Sin astillas</translation>
    </message>
    <message>
        <source>Border course</source>
        <translation>Hilada de borde</translation>
    </message>
    <message>
        <source>Show the finished job</source>
        <translation>Ver el trabajo terminado</translation>
    </message>
    <message>
        <source>Stage before</source>
        <translation>Etapa anterior</translation>
    </message>
    <message>
        <source>Stage after</source>
        <translation>Etapa siguiente</translation>
    </message>
    <message>
        <source>Stage: protect and remove</source>
        <translation>Etapa: proteger y demoler</translation>
    </message>
    <message>
        <source>Stage: dig</source>
        <translation>Etapa: excavar</translation>
    </message>
    <message>
        <source>Stage: under the ground</source>
        <translation>Etapa: bajo tierra</translation>
    </message>
    <message>
        <source>Stage: wall base and wall</source>
        <translation>Etapa: base del muro y muro</translation>
    </message>
    <message>
        <source>Stage: base layers</source>
        <translation>Etapa: capas de base</translation>
    </message>
    <message>
        <source>Stage: kerbs, coping and steps</source>
        <translation>Etapa: bordillos, albardilla y escalones</translation>
    </message>
    <message>
        <source>Stage: bedding and paving</source>
        <translation>Etapa: cama y adoquines</translation>
    </message>
    <message>
        <source>Stage: joints and edges</source>
        <translation>Etapa: juntas y bordes</translation>
    </message>
    <message>
        <source>Stage: finish and hand over</source>
        <translation>Etapa: acabar y entregar</translation>
    </message>
    <message>
        <source>Whole job in view</source>
        <translation>Ver todo el trabajo</translation>
    </message>
    <message>
        <source>Nearer</source>
        <translation>Acercar</translation>
    </message>
    <message>
        <source>Further</source>
        <translation>Alejar</translation>
    </message>
    <message>
        <source>Junctions</source>
        <translation>Encuentros</translation>
    </message>
    <message>
        <source>Falls</source>
        <translation>Pendientes</translation>
    </message>
    <message>
        <source>Next part of the window</source>
        <translation>Siguiente parte de la ventana</translation>
    </message>
    <message>
        <source>Next problem</source>
        <translation>Problema siguiente</translation>
    </message>
    <message>
        <source>Panels at the right</source>
        <translation>Paneles a la derecha</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Full screen</source>
        <translation>Pantalla completa</translation>
    </message>
    <message>
        <source>Material list…</source>
        <translation>Lista de materiales…</translation>
    </message>
    <message>
        <source>Setting-out table…</source>
        <translation>Tabla de trazo…</translation>
    </message>
    <message>
        <source>Write the items of this job…</source>
        <translation>Escribir los artículos de este trabajo…</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>About Groundcourse</source>
        <translation>Acerca de Groundcourse</translation>
    </message>
    <message>
        <source>Job book…</source>
        <translation>Libro de trabajos…</translation>
    </message>
    <message>
        <source>Save a version…</source>
        <translation>Guardar una versión…</translation>
    </message>
    <message>
        <source>Estimate…</source>
        <translation>Presupuesto…</translation>
    </message>
    <message>
        <source>What has changed since the last version…</source>
        <translation>Qué cambió desde la última versión…</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Sweep</source>
        <translation>Barrido</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Giro</translation>
    </message>
    <message>
        <source>East</source>
        <translation>Este</translation>
    </message>
    <message>
        <source>North</source>
        <translation>Norte</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>Radio</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Desnivel</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Way up</source>
        <translation>Subida hacia</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Área</translation>
    </message>
    <message>
        <source>Opacity, %</source>
        <translation>Opacidad, %</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Error</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texto</translation>
    </message>
    <message>
        <source>An angle is a number of degrees between -360 and 360, such as 45 or 22.5</source>
        <translation>Un ángulo es un número de grados entre -360 y 360, como 45 o 22.5</translation>
    </message>
    <message>
        <source>This takes a plain number, such as 3 or 0.6</source>
        <translation>Aquí va un número simple, como 3 o 0.6</translation>
    </message>
    <message>
        <source>This shape has no size</source>
        <translation>Esta figura no tiene tamaño</translation>
    </message>
    <message>
        <source>Click further away, or type its sides</source>
        <translation>Haga clic más lejos, o escriba sus lados</translation>
    </message>
    <message>
        <source>The three points lie in one line</source>
        <translation>Los tres puntos están en una línea</translation>
    </message>
    <message>
        <source>Click a point beside that line</source>
        <translation>Haga clic en un punto al lado de esa línea</translation>
    </message>
    <message>
        <source>This edge has no length</source>
        <translation>Este borde no tiene longitud</translation>
    </message>
    <message>
        <source>Click further away, or type a length</source>
        <translation>Haga clic más lejos, o escriba una longitud</translation>
    </message>
    <message>
        <source>That place lies more than 5 km from the start of the job</source>
        <translation>Ese lugar está a más de 5 km del inicio del trabajo</translation>
    </message>
    <message>
        <source>Draw nearer, or type a shorter length</source>
        <translation>Dibuje más cerca, o escriba una longitud menor</translation>
    </message>
    <message>
        <source>An outline needs three corners, or an arc</source>
        <translation>Un contorno necesita tres esquinas, o un arco</translation>
    </message>
    <message>
        <source>A line needs two points</source>
        <translation>Una línea necesita dos puntos</translation>
    </message>
    <message>
        <source>Click another point, or press Escape to drop this one</source>
        <translation>Haga clic en otro punto, u oprima Esc para soltar este</translation>
    </message>
    <message>
        <source>No arc of that radius reaches so far</source>
        <translation>Ningún arco de ese radio llega tan lejos</translation>
    </message>
    <message>
        <source>Type a larger radius</source>
        <translation>Escriba un radio mayor</translation>
    </message>
    <message>
        <source>This shape is not finished</source>
        <translation>Esta figura no está terminada</translation>
    </message>
    <message>
        <source>Finish it, or press Escape to drop it</source>
        <translation>Termínela, u oprima Esc para soltarla</translation>
    </message>
    <message>
        <source>Type it again, or clear the field</source>
        <translation>Escríbalo de nuevo, o vacíe el campo</translation>
    </message>
    <message>
        <source>Click the first corner.</source>
        <translation>Haga clic en la primera esquina.</translation>
    </message>
    <message>
        <source>Click the first point.</source>
        <translation>Haga clic en el primer punto.</translation>
    </message>
    <message>
        <source>Click the next corner, or type a length.</source>
        <translation>Haga clic en la esquina siguiente, o escriba una longitud.</translation>
    </message>
    <message>
        <source>Click the next corner, or type a length. Enter closes it.</source>
        <translation>Haga clic en la esquina siguiente, o escriba una longitud. Intro lo cierra.</translation>
    </message>
    <message>
        <source>Click the next point, or type a length. Enter ends it.</source>
        <translation>Haga clic en el punto siguiente, o escriba una longitud. Intro lo termina.</translation>
    </message>
    <message>
        <source>Click where the arc ends, or type a length.</source>
        <translation>Haga clic donde termina el arco, o escriba una longitud.</translation>
    </message>
    <message>
        <source>Click a point on the arc, or type a radius.</source>
        <translation>Haga clic en un punto del arco, o escriba un radio.</translation>
    </message>
    <message>
        <source>Click the centre of the arc, or type a radius.</source>
        <translation>Haga clic en el centro del arco, o escriba un radio.</translation>
    </message>
    <message>
        <source>Click where the arc ends, or type its sweep.</source>
        <translation>Haga clic donde termina el arco, o escriba su barrido.</translation>
    </message>
    <message>
        <source>Click where the arc ends, or type a radius.</source>
        <translation>Haga clic donde termina el arco, o escriba un radio.</translation>
    </message>
    <message>
        <source>Click the opposite corner, or type the sides.</source>
        <translation>Haga clic en la esquina opuesta, o escriba los lados.</translation>
    </message>
    <message>
        <source>Click the centre.</source>
        <translation>Haga clic en el centro.</translation>
    </message>
    <message>
        <source>Click a point on the circle, or type a radius.</source>
        <translation>Haga clic en un punto del círculo, o escriba un radio.</translation>
    </message>
    <message>
        <source>Click a point on the circle.</source>
        <translation>Haga clic en un punto del círculo.</translation>
    </message>
    <message>
        <source>Click the point opposite, or type the diameter.</source>
        <translation>Haga clic en el punto opuesto, o escriba el diámetro.</translation>
    </message>
    <message>
        <source>Click a second point on the circle.</source>
        <translation>Haga clic en un segundo punto del círculo.</translation>
    </message>
    <message>
        <source>Click a third point on the circle.</source>
        <translation>Haga clic en un tercer punto del círculo.</translation>
    </message>
    <message>
        <source>Click points along the curve. Enter closes it.</source>
        <translation>Haga clic en puntos de la curva. Intro la cierra.</translation>
    </message>
    <message>
        <source>Click points along the curve. Enter ends it.</source>
        <translation>Haga clic en puntos de la curva. Intro la termina.</translation>
    </message>
    <message>
        <source>Corner by corner</source>
        <translation>Esquina por esquina</translation>
    </message>
    <message>
        <source>Rectangle</source>
        <translation>Rectángulo</translation>
    </message>
    <message>
        <source>Circle</source>
        <translation>Círculo</translation>
    </message>
    <message>
        <source>Circle across</source>
        <translation>Círculo por diámetro</translation>
    </message>
    <message>
        <source>Circle through 3 points</source>
        <translation>Círculo por 3 puntos</translation>
    </message>
    <message>
        <source>Freeform</source>
        <translation>Forma libre</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Arc on from the edge</source>
        <translation>Arco que sigue al borde</translation>
    </message>
    <message>
        <source>Arc through a point</source>
        <translation>Arco por un punto</translation>
    </message>
    <message>
        <source>Arc about a centre</source>
        <translation>Arco desde un centro</translation>
    </message>
    <message>
        <source>Outline</source>
        <translation>Contorno</translation>
    </message>
    <message>
        <source>Along a line</source>
        <translation>Por una línea</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Alberca</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Muro</translation>
    </message>
    <message>
        <source>Building</source>
        <translation>Edificio</translation>
    </message>
    <message>
        <source>Keep-out</source>
        <translation>Vano</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Borde</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Drenaje</translation>
    </message>
    <message>
        <source>Removal</source>
        <translation>Demolición</translation>
    </message>
    <message>
        <source>Protection</source>
        <translation>Protección</translation>
    </message>
    <message>
        <source>Site mark</source>
        <translation>Marca del sitio</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Escalones</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Nivel</translation>
    </message>
    <message>
        <source>Feature</source>
        <translation>Elemento</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Click the first corner of the water&apos;s edge.</source>
        <translation>Haga clic en la primera esquina de la orilla del agua.</translation>
    </message>
    <message>
        <source>Click where the wall begins, at its face.</source>
        <translation>Haga clic donde empieza el muro, en su cara.</translation>
    </message>
    <message>
        <source>Click where the edge begins.</source>
        <translation>Haga clic donde empieza el borde.</translation>
    </message>
    <message>
        <source>Click the high end of the run.</source>
        <translation>Haga clic en el extremo alto del tramo.</translation>
    </message>
    <message>
        <source>Click the first corner of what goes.</source>
        <translation>Haga clic en la primera esquina de lo que se quita.</translation>
    </message>
    <message>
        <source>Click the first corner of what is protected.</source>
        <translation>Haga clic en la primera esquina de lo que se protege.</translation>
    </message>
    <message>
        <source>Choose what it is, then click its first point.</source>
        <translation>Elija qué es y haga clic en su primer punto.</translation>
    </message>
    <message>
        <source>Click the first corner of the flight.</source>
        <translation>Haga clic en la primera esquina del tramo de escalones.</translation>
    </message>
    <message>
        <source>Click a place, then type its height.</source>
        <translation>Haga clic en un lugar y escriba su altura.</translation>
    </message>
    <message>
        <source>Click its place.</source>
        <translation>Haga clic en su lugar.</translation>
    </message>
    <message>
        <source>Click its place, then type the note.</source>
        <translation>Haga clic en su lugar y escriba la nota.</translation>
    </message>
    <message>
        <source>Type its height, then Enter. Without one the level book gives it.</source>
        <translation>Escriba su altura, luego Intro. Sin ella, la da la libreta de nivel.</translation>
    </message>
    <message>
        <source>Type the note, then Enter.</source>
        <translation>Escriba la nota, luego Intro.</translation>
    </message>
    <message>
        <source>This note says nothing</source>
        <translation>Esta nota no dice nada</translation>
    </message>
    <message>
        <source>Type its text, or press Escape to drop it</source>
        <translation>Escriba su texto, u oprima Esc para soltarla</translation>
    </message>
    <message>
        <source>Click towards the landing, or type the way up. Type the rise.</source>
        <translation>Haga clic hacia el descanso, o escriba hacia dónde sube. Escriba el desnivel.</translation>
    </message>
    <message>
        <source>A flight rises</source>
        <translation>Los escalones suben</translation>
    </message>
    <message>
        <source>Type the rise as a positive length, and turn the way up round instead</source>
        <translation>Escriba el desnivel como longitud positiva, e invierta hacia dónde sube</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Click where to measure from.</source>
        <translation>Haga clic desde donde se mide.</translation>
    </message>
    <message>
        <source>Click the next point. Enter ends it.</source>
        <translation>Haga clic en el punto siguiente. Intro lo termina.</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Cota</translation>
    </message>
    <message>
        <source>Click where the dimension begins.</source>
        <translation>Haga clic donde empieza la cota.</translation>
    </message>
    <message>
        <source>Click where it ends.</source>
        <translation>Haga clic donde termina.</translation>
    </message>
    <message>
        <source>Site plan</source>
        <translation>Plano del sitio</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ubicar</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escalar</translation>
    </message>
    <message>
        <source>Check length</source>
        <translation>Revisar longitud</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Bloquear</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Desbloquear</translation>
    </message>
    <message>
        <source>Bring in a site plan, or select one of them.</source>
        <translation>Traiga un plano del sitio, o elija uno de ellos.</translation>
    </message>
    <message>
        <source>Drag the site plan, or type how far it moves.</source>
        <translation>Arrastre el plano del sitio, o escriba cuánto se mueve.</translation>
    </message>
    <message>
        <source>Click the point that stays, or type the turn.</source>
        <translation>Haga clic en el punto que queda fijo, o escriba el giro.</translation>
    </message>
    <message>
        <source>Click a point to turn, or type the turn.</source>
        <translation>Haga clic en un punto para girar, o escriba el giro.</translation>
    </message>
    <message>
        <source>Click where that point lies then, or type the turn.</source>
        <translation>Haga clic donde queda ese punto, o escriba el giro.</translation>
    </message>
    <message>
        <source>Click one end of a length that you know.</source>
        <translation>Haga clic en un extremo de una longitud conocida.</translation>
    </message>
    <message>
        <source>Click one end of another length that you know.</source>
        <translation>Haga clic en un extremo de otra longitud conocida.</translation>
    </message>
    <message>
        <source>Click its other end.</source>
        <translation>Haga clic en su otro extremo.</translation>
    </message>
    <message>
        <source>Type its length, then Enter.</source>
        <translation>Escriba su longitud, luego Intro.</translation>
    </message>
    <message>
        <source>This site plan is locked</source>
        <translation>Este plano del sitio está bloqueado</translation>
    </message>
    <message>
        <source>Unlock it to move it</source>
        <translation>Desbloquéelo para moverlo</translation>
    </message>
    <message>
        <source>The length between the two points is missing</source>
        <translation>Falta la longitud entre los dos puntos</translation>
    </message>
    <message>
        <source>Type a length of more than 0</source>
        <translation>Escriba una longitud mayor que 0</translation>
    </message>
    <message>
        <source>The two points lie on one spot</source>
        <translation>Los dos puntos están en el mismo lugar</translation>
    </message>
    <message>
        <source>Click a second point further away</source>
        <translation>Haga clic en un segundo punto más lejos</translation>
    </message>
    <message>
        <source>This length makes the site plan far too small or too large</source>
        <translation>Esta longitud deja el plano del sitio demasiado chico o demasiado grande</translation>
    </message>
    <message>
        <source>Look at its unit, and at the two points</source>
        <translation>Revise su unidad y los dos puntos</translation>
    </message>
    <message>
        <source>Opacity goes from 0 to 100 %</source>
        <translation>La opacidad va de 0 a 100 %</translation>
    </message>
    <message>
        <source>Type a number between them</source>
        <translation>Escriba un número entre ambos</translation>
    </message>
    <message>
        <source>Place site plan</source>
        <translation>Ubicar plano del sitio</translation>
    </message>
    <message>
        <source>Turn site plan</source>
        <translation>Girar plano del sitio</translation>
    </message>
    <message>
        <source>Scale site plan</source>
        <translation>Escalar plano del sitio</translation>
    </message>
    <message>
        <source>Check site plan</source>
        <translation>Revisar plano del sitio</translation>
    </message>
    <message>
        <source>Lock site plan</source>
        <translation>Bloquear plano del sitio</translation>
    </message>
    <message>
        <source>Unlock site plan</source>
        <translation>Desbloquear plano del sitio</translation>
    </message>
    <message>
        <source>Set opacity of site plan</source>
        <translation>Fijar opacidad del plano del sitio</translation>
    </message>
    <message>
        <source>Planter</source>
        <translation>Jardinera</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Árbol</translation>
    </message>
    <message>
        <source>Pillar</source>
        <translation>Pilar</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Inlet</source>
        <translation>Entrada de agua</translation>
    </message>
    <message>
        <source>Restraint</source>
        <translation>Contención</translation>
    </message>
    <message>
        <source>Kerb</source>
        <translation>Bordillo</translation>
    </message>
    <message>
        <source>Edging</source>
        <translation>Bordura</translation>
    </message>
    <message>
        <source>Pipe</source>
        <translation>Tubo</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>Canaleta</translation>
    </message>
    <message>
        <source>Sleeve</source>
        <translation>Camisa</translation>
    </message>
    <message>
        <source>Concrete</source>
        <translation>Concreto</translation>
    </message>
    <message>
        <source>Asphalt</source>
        <translation>Asfalto</translation>
    </message>
    <message>
        <source>Unit paving</source>
        <translation>Adoquines</translation>
    </message>
    <message>
        <source>Coping</source>
        <translation>Albardilla</translation>
    </message>
    <message>
        <source>Sod</source>
        <translation>Pasto</translation>
    </message>
    <message>
        <source>Stump</source>
        <translation>Tocón</translation>
    </message>
    <message>
        <source>Buried service</source>
        <translation>Servicio enterrado</translation>
    </message>
    <message>
        <source>Overhead line</source>
        <translation>Línea aérea</translation>
    </message>
    <message>
        <source>Lot line</source>
        <translation>Lindero</translation>
    </message>
    <message>
        <source>Setback</source>
        <translation>Retiro</translation>
    </message>
    <message>
        <source>Easement</source>
        <translation>Servidumbre</translation>
    </message>
    <message>
        <source>Flood line</source>
        <translation>Línea de inundación</translation>
    </message>
    <message>
        <source>Pool barrier</source>
        <translation>Barrera de alberca</translation>
    </message>
    <message>
        <source>Septic</source>
        <translation>Séptico</translation>
    </message>
    <message>
        <source>Well</source>
        <translation>Pozo</translation>
    </message>
    <message>
        <source>Gate</source>
        <translation>Puerta</translation>
    </message>
    <message>
        <source>Way in</source>
        <translation>Acceso</translation>
    </message>
    <message>
        <source>Drop spot</source>
        <translation>Lugar de descarga</translation>
    </message>
    <message>
        <source>Downspout</source>
        <translation>Bajante</translation>
    </message>
    <message>
        <source>Existing</source>
        <translation>Existente</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Terminado</translation>
    </message>
    <message>
        <source>Bench mark</source>
        <translation>Banco de nivel</translation>
    </message>
    <message>
        <source>Invert</source>
        <translation>Nivel de arrastre</translation>
    </message>
    <message>
        <source>Pick</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>Click an element, drag a corner, or take a tool.</source>
        <translation>Haga clic en un elemento, arrastre una esquina o tome una herramienta.</translation>
    </message>
    <message>
        <source>Let go where it belongs, or press Escape.</source>
        <translation>Suelte donde va, u oprima Esc.</translation>
    </message>
    <message>
        <source>Drag to the right: what lies wholly inside. To the left: what is touched.</source>
        <translation>Arrastre a la derecha: lo que queda todo adentro. A la izquierda: lo que se toca.</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Mirror</source>
        <translation>Reflejar</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Desfasar</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Dividir</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Unir</translation>
    </message>
    <message>
        <source>Cut a hole</source>
        <translation>Abrir un hueco</translation>
    </message>
    <message>
        <source>Edge to arc</source>
        <translation>Borde a arco</translation>
    </message>
    <message>
        <source>Trace an edge</source>
        <translation>Calcar un borde</translation>
    </message>
    <message>
        <source>Start point</source>
        <translation>Punto de arranque</translation>
    </message>
    <message>
        <source>Select what it is for: click an element.</source>
        <translation>Elija para qué es: haga clic en un elemento.</translation>
    </message>
    <message>
        <source>Select a paved area with a pattern: click it.</source>
        <translation>Elija un área pavimentada con aparejo: haga clic en ella.</translation>
    </message>
    <message>
        <source>Click a point of it to take hold of, or type how far.</source>
        <translation>Haga clic en un punto de donde tomarlo, o escriba cuánto.</translation>
    </message>
    <message>
        <source>Click where that point lies then, or type how far.</source>
        <translation>Haga clic donde queda ese punto, o escriba cuánto.</translation>
    </message>
    <message>
        <source>Click one end of the mirror line.</source>
        <translation>Haga clic en un extremo de la línea de reflejo.</translation>
    </message>
    <message>
        <source>Click the other end.</source>
        <translation>Haga clic en el otro extremo.</translation>
    </message>
    <message>
        <source>Click the side, as far away as it goes, or type how far.</source>
        <translation>Haga clic en el lado, a la distancia a que va, o escriba cuánto.</translation>
    </message>
    <message>
        <source>Click where the cut begins.</source>
        <translation>Haga clic donde empieza el corte.</translation>
    </message>
    <message>
        <source>Click where the cut ends.</source>
        <translation>Haga clic donde termina el corte.</translation>
    </message>
    <message>
        <source>Click the outline that joins it.</source>
        <translation>Haga clic en el contorno que se une.</translation>
    </message>
    <message>
        <source>Click an edge.</source>
        <translation>Haga clic en un borde.</translation>
    </message>
    <message>
        <source>Click a point that the arc goes through, or type a radius. 0 makes it straight.</source>
        <translation>Haga clic en un punto por donde pasa el arco, o escriba un radio. 0 lo hace recto.</translation>
    </message>
    <message>
        <source>Click where it begins, on an edge.</source>
        <translation>Haga clic donde empieza, en un borde.</translation>
    </message>
    <message>
        <source>Click where it ends, on the same outline.</source>
        <translation>Haga clic donde termina, en el mismo contorno.</translation>
    </message>
    <message>
        <source>Click where the pattern starts, or type a move or a direction.</source>
        <translation>Haga clic donde arranca el aparejo, o escriba un desplazamiento o una dirección.</translation>
    </message>
    <message>
        <source>Keep the first one</source>
        <translation>Conservar el original</translation>
    </message>
    <message>
        <source>The longer way round</source>
        <translation>Por el lado más largo</translation>
    </message>
    <message>
        <source>How far</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>Along</source>
        <translation>A lo largo</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>A través</translation>
    </message>
    <message>
        <source>Nothing is selected</source>
        <translation>No hay nada elegido</translation>
    </message>
    <message>
        <source>Click an element first</source>
        <translation>Primero haga clic en un elemento</translation>
    </message>
    <message>
        <source>No edge lies there</source>
        <translation>Ahí no hay borde</translation>
    </message>
    <message>
        <source>Click nearer to one</source>
        <translation>Haga clic más cerca de uno</translation>
    </message>
    <message>
        <source>This area has no pattern yet</source>
        <translation>Esta área aún no tiene aparejo</translation>
    </message>
    <message>
        <source>Choose one beside its section</source>
        <translation>Elija uno junto a su sección</translation>
    </message>
    <message>
        <source>That is the same place</source>
        <translation>Es el mismo lugar</translation>
    </message>
    <message>
        <source>Click further away, or type how far</source>
        <translation>Haga clic más lejos, o escriba cuánto</translation>
    </message>
    <message>
        <source>Protect and remove</source>
        <translation>Proteger y demoler</translation>
    </message>
    <message>
        <source>Dig</source>
        <translation>Excavar</translation>
    </message>
    <message>
        <source>Under the ground</source>
        <translation>Bajo tierra</translation>
    </message>
    <message>
        <source>Wall base and wall</source>
        <translation>Base del muro y muro</translation>
    </message>
    <message>
        <source>Base layers</source>
        <translation>Capas de base</translation>
    </message>
    <message>
        <source>Kerbs, coping and steps</source>
        <translation>Bordillos, albardilla y escalones</translation>
    </message>
    <message>
        <source>Bedding and paving</source>
        <translation>Cama y adoquines</translation>
    </message>
    <message>
        <source>Joints and edges</source>
        <translation>Juntas y bordes</translation>
    </message>
    <message>
        <source>Finish and hand over</source>
        <translation>Acabar y entregar</translation>
    </message>
    <message>
        <source>Permit and inspections</source>
        <translation>Permiso e inspecciones</translation>
    </message>
    <message>
        <source>Engineer</source>
        <translation>Ingeniero</translation>
    </message>
    <message>
        <source>Locating buried services</source>
        <translation>Localización de servicios enterrados</translation>
    </message>
    <message>
        <source>Moving on and off the site</source>
        <translation>Instalación y retiro de la obra</translation>
    </message>
    <message>
        <source>Bringing and fetching machines</source>
        <translation>Traer y llevar máquinas</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Combustible</translation>
    </message>
    <message>
        <source>Dump fees</source>
        <translation>Tarifas de vertedero</translation>
    </message>
    <message>
        <source>Toilet for the crew</source>
        <translation>Baño para la cuadrilla</translation>
    </message>
    <message>
        <source>Protection of lawn, plants and drive</source>
        <translation>Protección de césped, plantas y entrada</translation>
    </message>
    <message>
        <source>Lawn made good</source>
        <translation>Césped reparado</translation>
    </message>
    <message>
        <source>Irrigation made good</source>
        <translation>Riego reparado</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Deposit on pallets</source>
        <translation>Depósito de tarimas</translation>
    </message>
    <message>
        <source>Saw blades</source>
        <translation>Discos de corte</translation>
    </message>
    <message>
        <source>Small tools</source>
        <translation>Herramienta menor</translation>
    </message>
    <message>
        <source>Washing down</source>
        <translation>Lavado</translation>
    </message>
    <message>
        <source>Last list of small faults</source>
        <translation>Última lista de detalles</translation>
    </message>
    <message>
        <source>Reserve for the warranty</source>
        <translation>Reserva para la garantía</translation>
    </message>
    <message>
        <source>Fee on card payments</source>
        <translation>Comisión por pago con tarjeta</translation>
    </message>
    <message>
        <source>Swell of the soil</source>
        <translation>Esponjamiento de la tierra</translation>
    </message>
    <message>
        <source>Soil that can be placed again</source>
        <translation>Tierra que se puede reutilizar</translation>
    </message>
    <message>
        <source>Depth of the base</source>
        <translation>Espesor de la base</translation>
    </message>
    <message>
        <source>Price of haul and disposal</source>
        <translation>Precio de acarreo y disposición</translation>
    </message>
    <message>
        <source>Width of the gate and the path</source>
        <translation>Ancho del portón y del paso</translation>
    </message>
    <message>
        <source>Breakage</source>
        <translation>Roturas</translation>
    </message>
    <message>
        <source>Hours of work</source>
        <translation>Horas de trabajo</translation>
    </message>
    <message>
        <source>Direct cost</source>
        <translation>Costo directo</translation>
    </message>
</context>
<context>
    <name>kinds</name>
    <message>
        <source>paved-area</source>
        <translation>área pavimentada</translation>
    </message>
    <message>
        <source>pool</source>
        <translation>alberca</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>muro</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>escalones</translation>
    </message>
    <message>
        <source>building</source>
        <translation>edificio</translation>
    </message>
    <message>
        <source>keep-out</source>
        <translation>vano</translation>
    </message>
    <message>
        <source>edge-run</source>
        <translation>tramo de borde</translation>
    </message>
    <message>
        <source>drain-run</source>
        <translation>tramo de drenaje</translation>
    </message>
    <message>
        <source>level</source>
        <translation>nivel</translation>
    </message>
    <message>
        <source>feature</source>
        <translation>elemento</translation>
    </message>
    <message>
        <source>removal</source>
        <translation>demolición</translation>
    </message>
    <message>
        <source>site-mark</source>
        <translation>marca del sitio</translation>
    </message>
    <message>
        <source>protection</source>
        <translation>protección</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>dimension</source>
        <translation>cota</translation>
    </message>
    <message>
        <source>site-plan</source>
        <translation>plano del sitio</translation>
    </message>
    <message>
        <source>level-book</source>
        <translation>libreta de nivel</translation>
    </message>
    <message>
        <source>base-line</source>
        <translation>línea base</translation>
    </message>
    <message>
        <source>tape-book</source>
        <translation>libreta de cinta</translation>
    </message>
</context>
<context>
    <name>look</name>
    <message>
        <source>The font Noto Sans, Regular and Bold, is not there: install the package fonts-noto-core and start again.</source>
        <translation>Falta la letra Noto Sans, Regular y Bold: instale el paquete fonts-noto-core y empiece de nuevo.</translation>
    </message>
</context>
<context>
    <name>menus</name>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Editar</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Dibujar</translation>
    </message>
    <message>
        <source>Lay</source>
        <translation>Colocar</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Ver</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation>Catálogo</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Office</source>
        <translation>Oficina</translation>
    </message>
</context>
<context>
    <name>ui::BiteView</name>
    <message>
        <source>Machines get in</source>
        <translation>Entran máquinas</translation>
    </message>
    <message>
        <source>Small machines only</source>
        <translation>Solo máquinas pequeñas</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>A mano</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Calcularlo</translation>
    </message>
    <message>
        <source>What could bite</source>
        <translation>Lo que puede encarecer</translation>
    </message>
    <message>
        <source>Being worked out</source>
        <translation>Se está calculando</translation>
    </message>
    <message>
        <source>What the price hangs on before the ground is open: each assumption at its low and at its high, the rest as it is.</source>
        <translation>De qué depende el precio antes de abrir el terreno: cada supuesto en su mínimo y en su máximo, lo demás como está.</translation>
    </message>
    <message>
        <source>The job has changed since: work it out again</source>
        <translation>El trabajo cambió desde entonces: calcúlelo otra vez</translation>
    </message>
    <message>
        <source>Between %1 and %2, if each turned out for the best or for the worst; as it is, %3</source>
        <translation>Entre %1 y %2, si cada uno saliera lo mejor o lo peor; como está, %3</translation>
    </message>
    <message>
        <source>How much each could change the total</source>
        <translation>Cuánto puede cambiar el total cada uno</translation>
    </message>
    <message>
        <source>Ways onto the site</source>
        <translation>Maneras de entrar a la obra</translation>
    </message>
    <message>
        <source> (chosen)</source>
        <translation> (elegida)</translation>
    </message>
</context>
<context>
    <name>ui::BookWindow</name>
    <message>
        <source>A version is saved of the job that is open on the plan</source>
        <translation>Se guarda una versión del trabajo abierto en el plano</translation>
    </message>
    <message>
        <source>1 job</source>
        <translation>1 trabajo</translation>
    </message>
    <message>
        <source>%1 jobs</source>
        <translation>%1 trabajos</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Archive</source>
        <translation>Archivar</translation>
    </message>
    <message>
        <source>No job is chosen</source>
        <translation>Ningún trabajo elegido</translation>
    </message>
    <message>
        <source>%1: no version saved yet</source>
        <translation>%1: aún sin versiones guardadas</translation>
    </message>
    <message>
        <source>Versions of %1</source>
        <translation>Versiones de %1</translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation>Copia de %1</translation>
    </message>
    <message>
        <source>The printed sheet</source>
        <translation>La hoja impresa</translation>
    </message>
    <message>
        <source>%1.pdf</source>
        <translation>%1.pdf</translation>
    </message>
    <message>
        <source>Printed sheets (*.pdf)</source>
        <translation>Hojas impresas (*.pdf)</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written: %2</source>
        <translation>No se puede escribir %1: %2</translation>
    </message>
    <message>
        <source>Job book</source>
        <translation>Libro de trabajos</translation>
    </message>
    <message>
        <source>What went wrong</source>
        <translation>Qué falló</translation>
    </message>
    <message>
        <source>Search the jobs</source>
        <translation>Buscar en los trabajos</translation>
    </message>
    <message>
        <source>Number, job, customer or place</source>
        <translation>Número, trabajo, cliente o lugar</translation>
    </message>
    <message>
        <source>Sorted by</source>
        <translation>Ordenados por</translation>
    </message>
    <message>
        <source>Newest first</source>
        <translation>El más nuevo primero</translation>
    </message>
    <message>
        <source>By %1</source>
        <translation>Por %1</translation>
    </message>
    <message>
        <source>Archived ones too</source>
        <translation>También los archivados</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Trabajos</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Write a job file ...</source>
        <translation>Escribir un archivo de trabajo...</translation>
    </message>
    <message>
        <source>State of the work</source>
        <translation>Estado de la obra</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Trabajo nuevo</translation>
    </message>
    <message>
        <source>Bring in a job file ...</source>
        <translation>Traer un archivo de trabajo...</translation>
    </message>
    <message>
        <source>Versions of the job</source>
        <translation>Versiones del trabajo</translation>
    </message>
    <message>
        <source>Save a version ...</source>
        <translation>Guardar una versión...</translation>
    </message>
    <message>
        <source>Read the version</source>
        <translation>Leer la versión</translation>
    </message>
    <message>
        <source>Work on from here</source>
        <translation>Seguir desde aquí</translation>
    </message>
    <message>
        <source>Compare the two</source>
        <translation>Comparar las dos</translation>
    </message>
    <message>
        <source>Choose two versions with Ctrl</source>
        <translation>Elija dos versiones con Ctrl</translation>
    </message>
    <message>
        <source>Asked for</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Quoted</source>
        <translation>Cotizado</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>Acordado</translation>
    </message>
    <message>
        <source>Building</source>
        <translation>En obra</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Cerrado</translation>
    </message>
</context>
<context>
    <name>ui::ChangedView</name>
    <message>
        <source>added</source>
        <translation>añadido</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>Plan with what changed</source>
        <translation>Plano con lo que cambió</translation>
    </message>
    <message>
        <source>Nothing drawn has changed</source>
        <translation>Nada de lo dibujado ha cambiado</translation>
    </message>
</context>
<context>
    <name>ui::CompareWindow</name>
    <message>
        <source>Two versions side by side</source>
        <translation>Dos versiones lado a lado</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Líneas</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Drawing and choices</source>
        <translation>Dibujo y elecciones</translation>
    </message>
    <message>
        <source>The two are in different currencies, so their money is not compared.</source>
        <translation>Las dos están en monedas distintas, así que no se compara su dinero.</translation>
    </message>
    <message>
        <source>Difference in all: %1</source>
        <translation>Diferencia total: %1</translation>
    </message>
    <message>
        <source>Before: %1    After: %2</source>
        <translation>Antes: %1    Después: %2</translation>
    </message>
    <message>
        <source>Lines that differ</source>
        <translation>Líneas que difieren</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Quantity before</source>
        <translation>Cantidad antes</translation>
    </message>
    <message>
        <source>Quantity after</source>
        <translation>Cantidad después</translation>
    </message>
    <message>
        <source>Amount before</source>
        <translation>Importe antes</translation>
    </message>
    <message>
        <source>Amount after</source>
        <translation>Importe después</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>Steps of the price</source>
        <translation>Pasos del precio</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>What differs in the drawing and the choices</source>
        <translation>Qué difiere en el dibujo y las elecciones</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>added</source>
        <translation>añadido</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>The whole job</source>
        <translation>Todo el trabajo</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Precios</translation>
    </message>
    <message>
        <source>The job&apos;s catalogue</source>
        <translation>El catálogo del trabajo</translation>
    </message>
    <message>
        <source>Save as text</source>
        <translation>Guardar como texto</translation>
    </message>
    <message>
        <source>Save as CSV</source>
        <translation>Guardar como CSV</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plano</translation>
    </message>
</context>
<context>
    <name>ui::DifferencesDialog</name>
    <message>
        <source>Item</source>
        <translation>Artículo</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Aparejo</translation>
    </message>
    <message>
        <source>Build-up</source>
        <translation>Capas</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Labour rate</source>
        <translation>Rendimiento de mano de obra</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Junction</source>
        <translation>Encuentro</translation>
    </message>
    <message>
        <source>not in the catalogue</source>
        <translation>no está en el catálogo</translation>
    </message>
    <message>
        <source>another price</source>
        <translation>otro precio</translation>
    </message>
    <message>
        <source>other details</source>
        <translation>otros detalles</translation>
    </message>
    <message>
        <source>by others</source>
        <translation>por otros</translation>
    </message>
    <message>
        <source>%1 per %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>Keep the job&apos;s</source>
        <translation>Dejar lo del trabajo</translation>
    </message>
    <message>
        <source>Take the catalogue&apos;s</source>
        <translation>Tomar lo del catálogo</translation>
    </message>
    <message>
        <source>Put the job&apos;s into the catalogue</source>
        <translation>Pasar lo del trabajo al catálogo</translation>
    </message>
    <message>
        <source>What the job brings</source>
        <translation>Lo que trae el trabajo</translation>
    </message>
    <message>
        <source>The job comes with its own prices and parts. These are not as your catalogue has them. The job stays as it was priced unless you take the catalogue&apos;s.</source>
        <translation>El trabajo trae sus propios precios y piezas. Estos no son como los de su catálogo. El trabajo queda con sus precios salvo que tome los del catálogo.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Qué difiere</translation>
    </message>
    <message>
        <source>In the job</source>
        <translation>En el trabajo</translation>
    </message>
    <message>
        <source>In the catalogue</source>
        <translation>En el catálogo</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Keep all of the job&apos;s</source>
        <translation>Dejar todo lo del trabajo</translation>
    </message>
    <message>
        <source>Take all of the catalogue&apos;s</source>
        <translation>Tomar todo lo del catálogo</translation>
    </message>
    <message>
        <source>Put all into the catalogue</source>
        <translation>Pasar todo al catálogo</translation>
    </message>
    <message>
        <source>Bring the job in</source>
        <translation>Traer el trabajo</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>What to do with %1</source>
        <translation>Qué hacer con %1</translation>
    </message>
</context>
<context>
    <name>ui::EdgesPage</name>
    <message>
        <source>Its edges are not known yet.</source>
        <translation>Aún no se conocen sus bordes.</translation>
    </message>
</context>
<context>
    <name>ui::EstimateWindow</name>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>Beside the drawing</source>
        <translation>Fuera del dibujo</translation>
    </message>
    <message>
        <source>Payments</source>
        <translation>Pagos</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Textos</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>What could bite</source>
        <translation>Lo que puede encarecer</translation>
    </message>
</context>
<context>
    <name>ui::Header</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Save a version</source>
        <translation>Guardar versión</translation>
    </message>
    <message>
        <source>Print sheets</source>
        <translation>Imprimir hojas</translation>
    </message>
    <message>
        <source>Header</source>
        <translation>Encabezado</translation>
    </message>
    <message>
        <source>working copy</source>
        <translation>copia de trabajo</translation>
    </message>
    <message>
        <source>Saved versions come with the job book. Every edit is kept already.</source>
        <translation>Las versiones guardadas vienen con el libro de trabajos. Cada cambio ya queda guardado.</translation>
    </message>
    <message>
        <source>Printing comes with the sheets.</source>
        <translation>La impresión viene con las hojas.</translation>
    </message>
    <message>
        <source>Job without a name</source>
        <translation>Trabajo sin nombre</translation>
    </message>
    <message>
        <source>Undo %1</source>
        <translation>Deshacer %1</translation>
    </message>
    <message>
        <source>Nothing to undo</source>
        <translation>Nada que deshacer</translation>
    </message>
    <message>
        <source>Redo %1</source>
        <translation>Rehacer %1</translation>
    </message>
    <message>
        <source>Nothing to redo</source>
        <translation>Nada que rehacer</translation>
    </message>
</context>
<context>
    <name>ui::HoldList</name>
    <message>
        <source>before %1</source>
        <translation>antes de %1</translation>
    </message>
    <message>
        <source>looked at by %1, %2</source>
        <translation>revisado por %1, %2</translation>
    </message>
</context>
<context>
    <name>ui::JobModel</name>
    <message>
        <source>%1, archived</source>
        <translation>%1, archivado</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Núm.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiado</translation>
    </message>
    <message>
        <source>Versions</source>
        <translation>Versiones</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
</context>
<context>
    <name>ui::KnownModel</name>
    <message>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>East</source>
        <translation>Este</translation>
    </message>
    <message>
        <source>North</source>
        <translation>Norte</translation>
    </message>
    <message>
        <source>there is a known point of that name: type another</source>
        <translation>ya hay un punto conocido con ese nombre: escriba otro</translation>
    </message>
    <message>
        <source>Known point %1</source>
        <translation>Punto conocido %1</translation>
    </message>
    <message>
        <source>Take out known point %1</source>
        <translation>Quitar punto conocido %1</translation>
    </message>
</context>
<context>
    <name>ui::LookForm</name>
    <message>
        <source>Who looked at it and when</source>
        <translation>Quién lo revisó y cuándo</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Revisado</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Who looked at it is missing: type a name.</source>
        <translation>Falta quién lo revisó: escriba un nombre.</translation>
    </message>
    <message>
        <source>The day is missing: type it, or press Today.</source>
        <translation>Falta el día: escríbalo, u oprima Hoy.</translation>
    </message>
</context>
<context>
    <name>ui::MainWindow</name>
    <message>
        <source>Job without a name</source>
        <translation>Trabajo sin nombre</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>About Groundcourse</source>
        <translation>Acerca de Groundcourse</translation>
    </message>
    <message>
        <source>Groundcourse: from the drawing of a paved outdoor space to a priced order list.
Free software under the GNU General Public License, version 3 or later.</source>
        <translation>Groundcourse: del dibujo de un espacio exterior pavimentado a una lista de pedido con precios.
Software libre bajo la Licencia Pública General GNU, versión 3 o posterior.</translation>
    </message>
    <message>
        <source>Select a paved area with a pattern first</source>
        <translation>Primero elija un área pavimentada con aparejo</translation>
    </message>
    <message>
        <source>Find an element or an action</source>
        <translation>Buscar un elemento o una acción</translation>
    </message>
    <message>
        <source>What to find</source>
        <translation>Qué buscar</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Lo encontrado</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Tecla</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Qué hace</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>One step back; twice to Pick</source>
        <translation>Un paso atrás; dos veces, a Elegir</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Finishes what is drawn</source>
        <translation>Termina lo que se dibuja</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Retroceso</translation>
    </message>
    <message>
        <source>Takes the last point back</source>
        <translation>Quita el último punto</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>Length, angle, next field</source>
        <translation>Longitud, ángulo, campo siguiente</translation>
    </message>
    <message>
        <source>Digits</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>Type a length while drawing</source>
        <translation>Escribir una longitud al dibujar</translation>
    </message>
    <message>
        <source>A while drawing</source>
        <translation>A al dibujar</translation>
    </message>
    <message>
        <source>Line or arc</source>
        <translation>Línea o arco</translation>
    </message>
    <message>
        <source>Arrows, Shift and arrows</source>
        <translation>Flechas, Mayús y flechas</translation>
    </message>
    <message>
        <source>Move what is selected by a step, by ten</source>
        <translation>Mueve lo elegido un paso, diez pasos</translation>
    </message>
    <message>
        <source>Shift, Alt while drawing</source>
        <translation>Mayús, Alt al dibujar</translation>
    </message>
    <message>
        <source>Angles in steps of 15 degrees; take hold of nothing</source>
        <translation>Ángulos de 15 en 15 grados; no se agarra a nada</translation>
    </message>
    <message>
        <source>Space and drag, middle button</source>
        <translation>Espacio y arrastrar, botón central</translation>
    </message>
    <message>
        <source>Move the paper</source>
        <translation>Mover el papel</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>, line %1</source>
        <translation>, línea %1</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written: %2</source>
        <translation>No se puede escribir %1: %2</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Trabajo nuevo</translation>
    </message>
    <message>
        <source>The list is still being worked out: write it in a moment</source>
        <translation>La lista aún se está calculando: escríbala en un momento</translation>
    </message>
    <message>
        <source>The material list is in %1</source>
        <translation>La lista de materiales está en %1</translation>
    </message>
    <message>
        <source>The job is in %1</source>
        <translation>El trabajo está en %1</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read: %2</source>
        <translation>No se puede leer %1: %2</translation>
    </message>
    <message>
        <source>The drawing names no unit: it was read in feet</source>
        <translation>El dibujo no indica unidad: se leyó en pies</translation>
    </message>
    <message>
        <source>The drawing names no unit: it was read in metres</source>
        <translation>El dibujo no indica unidad: se leyó en metros</translation>
    </message>
    <message>
        <source>Bring in outlines</source>
        <translation>Traer contornos</translation>
    </message>
    <message>
        <source>Bring in a job file</source>
        <translation>Traer un archivo de trabajo</translation>
    </message>
    <message>
        <source>Job files (*.json)</source>
        <translation>Archivos de trabajo (*.json)</translation>
    </message>
    <message>
        <source>Write a job file</source>
        <translation>Escribir un archivo de trabajo</translation>
    </message>
    <message>
        <source>Bring in a site plan</source>
        <translation>Traer un plano del sitio</translation>
    </message>
    <message>
        <source>Site plans (*.png *.jpg *.jpeg *.pdf *.geojson *.json *.dxf)</source>
        <translation>Planos del sitio (*.png *.jpg *.jpeg *.pdf *.geojson *.json *.dxf)</translation>
    </message>
    <message>
        <source>Bring in outlines as elements</source>
        <translation>Traer contornos como elementos</translation>
    </message>
    <message>
        <source>Outlines (*.geojson *.json *.dxf)</source>
        <translation>Contornos (*.geojson *.json *.dxf)</translation>
    </message>
    <message>
        <source>Material list</source>
        <translation>Lista de materiales</translation>
    </message>
    <message>
        <source>material-list.csv</source>
        <translation>lista-de-materiales.csv</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>Setting-out table</source>
        <translation>Tabla de trazo</translation>
    </message>
    <message>
        <source>setting-out.csv</source>
        <translation>tabla-de-trazo.csv</translation>
    </message>
    <message>
        <source>The setting-out table is in %1</source>
        <translation>La tabla de trazo está en %1</translation>
    </message>
    <message>
        <source>Items of this job</source>
        <translation>Artículos de este trabajo</translation>
    </message>
    <message>
        <source>items.csv</source>
        <translation>articulos.csv</translation>
    </message>
    <message>
        <source>The items are in %1</source>
        <translation>Los artículos están en %1</translation>
    </message>
</context>
<context>
    <name>ui::Office</name>
    <message>
        <source>The numbers are still being worked out: save the version in a moment</source>
        <translation>Los números aún se calculan: guarde la versión en un momento</translation>
    </message>
    <message>
        <source>Version %1 is saved</source>
        <translation>La versión %1 está guardada</translation>
    </message>
    <message>
        <source>working copy, after version %1</source>
        <translation>copia de trabajo, tras la versión %1</translation>
    </message>
    <message>
        <source>Work on from version %1</source>
        <translation>Seguir desde la versión %1</translation>
    </message>
    <message>
        <source>Write a job file</source>
        <translation>Escribir un archivo de trabajo</translation>
    </message>
    <message>
        <source>Job files (*.json)</source>
        <translation>Archivos de trabajo (*.json)</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Versión %1</translation>
    </message>
    <message>
        <source>Version %1, %2</source>
        <translation>Versión %1, %2</translation>
    </message>
    <message>
        <source>No version of this job is saved yet: save one, and later changes show against it</source>
        <translation>Aún no hay versión guardada de este trabajo: guarde una y los cambios se verán contra ella</translation>
    </message>
    <message>
        <source>The numbers are still being worked out: compare in a moment</source>
        <translation>Los números aún se calculan: compare en un momento</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
</context>
<context>
    <name>ui::PlanView</name>
    <message>
        <source>net area %1 %2</source>
        <translation>área neta %1 %2</translation>
    </message>
    <message>
        <source>ft²</source>
        <translation>ft²</translation>
    </message>
    <message>
        <source>m²</source>
        <translation>m²</translation>
    </message>
    <message>
        <source>length %1 %2</source>
        <translation>longitud %1 %2</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>What lies here</source>
        <translation>Qué hay aquí</translation>
    </message>
    <message>
        <source>Nothing is drawn here</source>
        <translation>Aquí no hay nada dibujado</translation>
    </message>
    <message>
        <source>later</source>
        <translation>después</translation>
    </message>
    <message>
        <source>expansion joint</source>
        <translation>junta de expansión</translation>
    </message>
    <message>
        <source>isolation joint</source>
        <translation>junta de aislamiento</translation>
    </message>
    <message>
        <source>restraint</source>
        <translation>contención</translation>
    </message>
    <message>
        <source>kerb</source>
        <translation>bordillo</translation>
    </message>
    <message>
        <source>flush</source>
        <translation>a ras</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planta</translation>
    </message>
</context>
<context>
    <name>ui::PriceField</name>
    <message>
        <source>Give a price for %1</source>
        <translation>Dar precio a %1</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>Give it</source>
        <translation>Dar precio</translation>
    </message>
    <message>
        <source>Others supply it</source>
        <translation>Lo ponen otros</translation>
    </message>
</context>
<context>
    <name>ui::PriceView</name>
    <message>
        <source>Direct cost by kind</source>
        <translation>Costo directo por tipo</translation>
    </message>
    <message>
        <source>Direct cost by stage</source>
        <translation>Costo directo por etapa</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>The numbers are being worked out</source>
        <translation>Los números se están calculando</translation>
    </message>
    <message>
        <source>Being worked out anew; these are the numbers before</source>
        <translation>Se calcula de nuevo; estos son los números de antes</translation>
    </message>
    <message>
        <source>All lines have their price</source>
        <translation>Todas las líneas tienen su precio</translation>
    </message>
    <message>
        <source>Not final: something has no price or no result, see what is to solve</source>
        <translation>No es definitivo: algo no tiene precio o resultado, vea lo que falta resolver</translation>
    </message>
</context>
<context>
    <name>ui::Prompt</name>
    <message>
        <source>Prompt</source>
        <translation>Indicación</translation>
    </message>
    <message>
        <source>Choose stage 3</source>
        <translation>Elegir la etapa 3</translation>
    </message>
    <message>
        <source>Drag a corner</source>
        <translation>Arrastrar una esquina</translation>
    </message>
    <message>
        <source>Write the material list</source>
        <translation>Escribir la lista de materiales</translation>
    </message>
    <message>
        <source>This is a demo job. Try:</source>
        <translation>Este es un trabajo de muestra. Pruebe:</translation>
    </message>
</context>
<context>
    <name>ui::PromptField</name>
    <message>
        <source>not read</source>
        <translation>no se entendió</translation>
    </message>
    <message>
        <source>holds: %1</source>
        <translation>fijo: %1</translation>
    </message>
    <message>
        <source>Not read. %1</source>
        <translation>No se entendió. %1</translation>
    </message>
</context>
<context>
    <name>ui::PromptNote</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Close this sentence</source>
        <translation>Cerrar esta frase</translation>
    </message>
</context>
<context>
    <name>ui::SaveVersionDialog</name>
    <message>
        <source>Save a version</source>
        <translation>Guardar versión</translation>
    </message>
    <message>
        <source>Name of the version</source>
        <translation>Nombre de la versión</translation>
    </message>
    <message>
        <source>As quoted, with steps, second price ...</source>
        <translation>Como se cotizó, con escalones, segundo precio...</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>%1, not complete yet</source>
        <translation>%1, aún incompleto</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>A version stays as it is: the plan, its prices and its total can be read and printed again at any time.</source>
        <translation>Una versión queda como está: el plano, sus precios y su total se pueden leer e imprimir otra vez cuando sea.</translation>
    </message>
    <message>
        <source>Save the version</source>
        <translation>Guardar la versión</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
</context>
<context>
    <name>ui::SelectedPanel</name>
    <message>
        <source>Selected</source>
        <translation>Elegido</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>No name</source>
        <translation>Sin nombre</translation>
    </message>
    <message>
        <source>Build-up</source>
        <translation>Capas</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Aparejo</translation>
    </message>
    <message>
        <source>Edges</source>
        <translation>Bordes</translation>
    </message>
    <message>
        <source>Levels</source>
        <translation>Niveles</translation>
    </message>
    <message>
        <source>The job</source>
        <translation>El trabajo</translation>
    </message>
    <message>
        <source>Nothing is selected</source>
        <translation>No hay nada elegido</translation>
    </message>
    <message>
        <source>%1 selected</source>
        <translation>%1 elegidos</translation>
    </message>
</context>
<context>
    <name>ui::SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>As the machine</source>
        <translation>El del equipo</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>Claro u oscuro</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>%1 px</source>
        <translation>%1 px</translation>
    </message>
    <message>
        <source>Take these</source>
        <translation>Usar estos</translation>
    </message>
    <message>
        <source>Leave as it was</source>
        <translation>Dejar como estaba</translation>
    </message>
</context>
<context>
    <name>ui::SitePlans</name>
    <message>
        <source>The site plan %1 is not there any more: bring it in again</source>
        <translation>El plano del sitio %1 ya no está: tráigalo de nuevo</translation>
    </message>
    <message>
        <source>Bring in a site plan</source>
        <translation>Traer un plano del sitio</translation>
    </message>
</context>
<context>
    <name>ui::SolveItems</name>
    <message>
        <source>Problem</source>
        <translation>Problema</translation>
    </message>
    <message>
        <source>To decide</source>
        <translation>Por decidir</translation>
    </message>
    <message>
        <source>To know</source>
        <translation>Aviso</translation>
    </message>
    <message>
        <source>Go to it</source>
        <translation>Ir ahí</translation>
    </message>
    <message>
        <source>Nothing is to solve.</source>
        <translation>No hay nada por resolver.</translation>
    </message>
</context>
<context>
    <name>ui::SolvePanel</name>
    <message>
        <source>To solve</source>
        <translation>Por resolver</translation>
    </message>
    <message>
        <source>What is to solve</source>
        <translation>Qué está por resolver</translation>
    </message>
    <message>
        <source>Show what is to know (%1)</source>
        <translation>Mostrar avisos (%1)</translation>
    </message>
    <message>
        <source>Nothing is to solve.</source>
        <translation>No hay nada por resolver.</translation>
    </message>
</context>
<context>
    <name>ui::StagePanel</name>
    <message>
        <source>Decides: %1</source>
        <translation>Decide: %1</translation>
    </message>
    <message>
        <source>Caution. %1</source>
        <translation>Precaución. %1</translation>
    </message>
    <message>
        <source>Before it is covered up</source>
        <translation>Antes de taparlo</translation>
    </message>
    <message>
        <source>Take back a look</source>
        <translation>Anular una revisión</translation>
    </message>
    <message>
        <source>The job as it stands when this stage is done.</source>
        <translation>El trabajo como queda al terminar esta etapa.</translation>
    </message>
    <message>
        <source>crew of %1</source>
        <translation>cuadrilla de %1</translation>
    </message>
    <message>
        <source>Stage %1, %2</source>
        <translation>Etapa %1, %2</translation>
    </message>
    <message>
        <source>This stage covers 1 thing that nobody has looked at: %1.</source>
        <translation>Esta etapa tapa 1 cosa que nadie ha revisado: %1.</translation>
    </message>
    <message>
        <source>This stage covers %1 things that nobody has looked at yet.</source>
        <translation>Esta etapa tapa %1 cosas que nadie ha revisado aún.</translation>
    </message>
    <message>
        <source>Looked at: %1</source>
        <translation>Revisado: %1</translation>
    </message>
</context>
<context>
    <name>ui::StartBox</name>
    <message>
        <source>Where to start laying</source>
        <translation>Dónde empezar a colocar</translation>
    </message>
    <message>
        <source>Move this edge, free edges only</source>
        <translation>Mover este borde, solo bordes libres</translation>
    </message>
    <message>
        <source>Move it there</source>
        <translation>Moverlo ahí</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>All its edges meet something, or are curved.</source>
        <translation>Todos sus bordes topan con algo, o son curvos.</translation>
    </message>
    <message>
        <source>Edge %1, %2</source>
        <translation>Borde %1, %2</translation>
    </message>
    <message>
        <source>Where it costs least</source>
        <translation>Donde cuesta menos</translation>
    </message>
    <message>
        <source>Trying starts …</source>
        <translation>Probando arranques …</translation>
    </message>
    <message>
        <source>The job was changed meanwhile. Ask again.</source>
        <translation>El trabajo cambió entretanto. Pida de nuevo.</translation>
    </message>
    <message>
        <source>Least cut if edges are off</source>
        <translation>Corte menor con bordes desviados</translation>
    </message>
    <message>
        <source>%1: it starts in the best place found already.</source>
        <translation>%1: ya arranca en el mejor lugar encontrado.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1: the start point was moved.</source>
        <translation>%1: se movió el punto de arranque.</translation>
    </message>
    <message>
        <source>Trying places for edge %1 …</source>
        <translation>Probando lugares para el borde %1 …</translation>
    </message>
    <message>
        <source>Edge %1 lies best where it is.</source>
        <translation>El borde %1 queda mejor donde está.</translation>
    </message>
    <message>
        <source>Edge %1 out by %2</source>
        <translation>Borde %1 hacia afuera %2</translation>
    </message>
    <message>
        <source>Edge %1 in by %2</source>
        <translation>Borde %1 hacia adentro %2</translation>
    </message>
    <message>
        <source>Move edge %1 of %2</source>
        <translation>Mover borde %1 de %2</translation>
    </message>
</context>
<context>
    <name>ui::StartPage</name>
    <message>
        <source>How to begin</source>
        <translation>Cómo empezar</translation>
    </message>
    <message>
        <source>An empty job</source>
        <translation>Un trabajo vacío</translation>
    </message>
    <message>
        <source>Draw an area</source>
        <translation>Dibujar un área</translation>
    </message>
    <message>
        <source>Bring in a site plan</source>
        <translation>Traer un plano del sitio</translation>
    </message>
    <message>
        <source>Open the demo job</source>
        <translation>Abrir el trabajo de muestra</translation>
    </message>
</context>
<context>
    <name>ui::Strip</name>
    <message>
        <source>Protect</source>
        <translation>Proteger</translation>
    </message>
    <message>
        <source>Dig</source>
        <translation>Excavar</translation>
    </message>
    <message>
        <source>Under ground</source>
        <translation>Bajo tierra</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Muro</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Coping</source>
        <translation>Albardilla</translation>
    </message>
    <message>
        <source>Paving</source>
        <translation>Adoquines</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Juntas</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Acabado</translation>
    </message>
    <message>
        <source>%1 to solve</source>
        <translation>%1 por resolver</translation>
    </message>
    <message>
        <source>%1 to decide</source>
        <translation>%1 por decidir</translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation>Orden de obra</translation>
    </message>
</context>
<context>
    <name>ui::TakeoffItems</name>
    <message>
        <source>plan</source>
        <translation>planta</translation>
    </message>
    <message>
        <source>section</source>
        <translation>sección</translation>
    </message>
    <message>
        <source>catalogue</source>
        <translation>catálogo</translation>
    </message>
    <message>
        <source>choices</source>
        <translation>opciones</translation>
    </message>
    <message>
        <source>The share of %1: %2 of %3, as it is needed for %4.</source>
        <translation>La parte de %1: %2 de %3, según se necesita para %4.</translation>
    </message>
    <message>
        <source>%1 for %2 together.</source>
        <translation>%1 para %2 en conjunto.</translation>
    </message>
    <message>
        <source>Stage %1</source>
        <translation>Etapa %1</translation>
    </message>
    <message>
        <source>Give a price for %1</source>
        <translation>Dar precio a %1</translation>
    </message>
    <message>
        <source>ordered %1</source>
        <translation>pedido %1</translation>
    </message>
</context>
<context>
    <name>ui::TakeoffPanel</name>
    <message>
        <source>Takeoff</source>
        <translation>Medición</translation>
    </message>
    <message>
        <source>Takeoff lines</source>
        <translation>Renglones de medición</translation>
    </message>
    <message numerus="yes">
        <source>To solve, %n</source>
        <translation>
            <numerusform>Por resolver, %n</numerusform>
            <numerusform>Por resolver, %n</numerusform>
        </translation>
    </message>
    <message>
        <source>To solve</source>
        <translation>Por resolver</translation>
    </message>
    <message>
        <source>This element</source>
        <translation>Este elemento</translation>
    </message>
    <message>
        <source>This stage</source>
        <translation>Esta etapa</translation>
    </message>
    <message>
        <source>Whole job</source>
        <translation>Todo el trabajo</translation>
    </message>
    <message>
        <source>Nothing is ordered yet. Draw an area, and give it a build-up.</source>
        <translation>Aún no se pide nada. Dibuje un área y dele capas.</translation>
    </message>
    <message>
        <source>Nothing is ordered for this element.</source>
        <translation>No se pide nada para este elemento.</translation>
    </message>
    <message>
        <source>Nothing is ordered for this stage.</source>
        <translation>No se pide nada para esta etapa.</translation>
    </message>
    <message>
        <source>%1, %2, is one of the choices for the whole job.</source>
        <translation>%1, %2, es una de las opciones para todo el trabajo.</translation>
    </message>
    <message>
        <source>%1, %2, stands in the job&apos;s catalogue under %3.</source>
        <translation>%1, %2, está en el catálogo del trabajo en %3.</translation>
    </message>
</context>
<context>
    <name>ui::TapedPanel</name>
    <message>
        <source>Measuring in</source>
        <translation>Toma de medidas</translation>
    </message>
    <message>
        <source>Tapes as read</source>
        <translation>Cintas como se leyeron</translation>
    </message>
    <message>
        <source>Worst first</source>
        <translation>Peor primero</translation>
    </message>
    <message>
        <source>Strike out</source>
        <translation>Tachar</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Why it does not count</source>
        <translation>Por qué no cuenta</translation>
    </message>
    <message>
        <source>What the tapes still need</source>
        <translation>Qué falta a las cintas</translation>
    </message>
    <message>
        <source>Known points</source>
        <translation>Puntos conocidos</translation>
    </message>
    <message>
        <source>Corner of what is drawn</source>
        <translation>Esquina de lo dibujado</translation>
    </message>
    <message>
        <source>Add this corner</source>
        <translation>Agregar esta esquina</translation>
    </message>
    <message>
        <source>Draw through points</source>
        <translation>Dibujar por puntos</translation>
    </message>
    <message>
        <source>Points to draw through</source>
        <translation>Puntos por los que se dibuja</translation>
    </message>
    <message>
        <source>A, B, (C), D</source>
        <translation>A, B, (C), D</translation>
    </message>
    <message>
        <source>In order. In brackets: a point that an arc goes through.</source>
        <translation>En orden. Entre paréntesis: un punto por el que pasa un arco.</translation>
    </message>
    <message>
        <source>Draw as</source>
        <translation>Dibujar como</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Área</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Alberca</translation>
    </message>
    <message>
        <source>Building</source>
        <translation>Edificio</translation>
    </message>
    <message>
        <source>Keep-out</source>
        <translation>Vano</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Muro</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Borde</translation>
    </message>
    <message>
        <source>Levels</source>
        <translation>Niveles</translation>
    </message>
    <message>
        <source>Smooth curve</source>
        <translation>Curva suave</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Dibujar</translation>
    </message>
    <message>
        <source>Points found: %1</source>
        <translation>Puntos hallados: %1</translation>
    </message>
    <message>
        <source>Missing: %1</source>
        <translation>Faltan: %1</translation>
    </message>
    <message>
        <source>Tapes to spare: %1</source>
        <translation>Cintas de sobra: %1</translation>
    </message>
    <message>
        <source>Count it again</source>
        <translation>Contarla otra vez</translation>
    </message>
    <message>
        <source>%1, corner %2</source>
        <translation>%1, esquina %2</translation>
    </message>
    <message>
        <source>%1 %2, corner %3</source>
        <translation>%1 %2, esquina %3</translation>
    </message>
    <message>
        <source>Why tape %1 does not count</source>
        <translation>Por qué la cinta %1 no cuenta</translation>
    </message>
    <message>
        <source>A tape is struck out with a reason: type why</source>
        <translation>Una cinta se tacha con un motivo: escriba por qué</translation>
    </message>
    <message>
        <source>Nothing is drawn yet that has a corner</source>
        <translation>Aún no hay nada dibujado que tenga esquina</translation>
    </message>
    <message>
        <source>%1 is among the known points already</source>
        <translation>%1 ya está entre los puntos conocidos</translation>
    </message>
    <message>
        <source>Draw %1 through taped points</source>
        <translation>Dibujar %1 por puntos medidos</translation>
    </message>
    <message>
        <source>%1 is drawn</source>
        <translation>%1 está dibujado</translation>
    </message>
</context>
<context>
    <name>ui::TapesModel</name>
    <message>
        <source>Tape</source>
        <translation>Cinta</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Reads</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Desfasar</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Desvío</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>struck out: %1</source>
        <translation>tachada: %1</translation>
    </message>
    <message>
        <source>point not found</source>
        <translation>punto no hallado</translation>
    </message>
    <message>
        <source>to fill in</source>
        <translation>por llenar</translation>
    </message>
    <message>
        <source>off by %1</source>
        <translation>desvío de %1</translation>
    </message>
    <message>
        <source>disagrees</source>
        <translation>no concuerda</translation>
    </message>
    <message>
        <source>agrees</source>
        <translation>concuerda</translation>
    </message>
    <message>
        <source>no check</source>
        <translation>sin comprobar</translation>
    </message>
    <message>
        <source>tie</source>
        <translation>liga</translation>
    </message>
    <message>
        <source>offset</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>the way is a tie or an offset: type t or o</source>
        <translation>el tipo es liga o normal: escriba l o n</translation>
    </message>
    <message>
        <source>the side is left or right: type l or r</source>
        <translation>el lado es izquierda o derecha: escriba i o d</translation>
    </message>
    <message>
        <source>Type tape %1</source>
        <translation>Escribir cinta %1</translation>
    </message>
    <message>
        <source>Count tape %1 again</source>
        <translation>Contar otra vez la cinta %1</translation>
    </message>
    <message>
        <source>Strike out tape %1</source>
        <translation>Tachar cinta %1</translation>
    </message>
    <message>
        <source>Take out tape %1</source>
        <translation>Quitar cinta %1</translation>
    </message>
</context>
<context>
    <name>ui::ToolList</name>
    <message>
        <source>Pick</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>Site plan</source>
        <translation>Plano del sitio</translation>
    </message>
    <message>
        <source>Site mark</source>
        <translation>Marca del sitio</translation>
    </message>
    <message>
        <source>Building</source>
        <translation>Edificio</translation>
    </message>
    <message>
        <source>Keep-out</source>
        <translation>Vano</translation>
    </message>
    <message>
        <source>Removal</source>
        <translation>Demolición</translation>
    </message>
    <message>
        <source>Protection</source>
        <translation>Protección</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Nivel</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Muro</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Drenaje</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Alberca</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Escalones</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Área</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Borde</translation>
    </message>
    <message>
        <source>Feature</source>
        <translation>Elemento</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Cota</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Girar</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Mirror</source>
        <translation>Reflejar</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Desfasar</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Dividir</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Unir</translation>
    </message>
    <message>
        <source>Cut a hole</source>
        <translation>Abrir un hueco</translation>
    </message>
    <message>
        <source>Edge to arc</source>
        <translation>Borde a arco</translation>
    </message>
    <message>
        <source>Trace an edge</source>
        <translation>Calcar un borde</translation>
    </message>
    <message>
        <source>Start point</source>
        <translation>Punto de arranque</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
</context>
<context>
    <name>ui::TotalPanel</name>
    <message>
        <source>Go to it</source>
        <translation>Ir ahí</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Computing</source>
        <translation>Calculando</translation>
    </message>
    <message>
        <source>Where the money goes</source>
        <translation>Adónde va el dinero</translation>
    </message>
    <message>
        <source>Material %1</source>
        <translation>Material %1</translation>
    </message>
    <message>
        <source>Labour %1</source>
        <translation>Mano de obra %1</translation>
    </message>
    <message>
        <source>Machines %1</source>
        <translation>Máquinas %1</translation>
    </message>
    <message>
        <source>Fees %1</source>
        <translation>Cuotas %1</translation>
    </message>
    <message>
        <source>Whole job</source>
        <translation>Todo el trabajo</translation>
    </message>
    <message>
        <source>Whole job, finished</source>
        <translation>Todo el trabajo, terminado</translation>
    </message>
    <message>
        <source>Whole job so far</source>
        <translation>Todo el trabajo hasta ahora</translation>
    </message>
    <message>
        <source>Whole job, computing</source>
        <translation>Todo el trabajo, calculando</translation>
    </message>
    <message>
        <source>Whole job, out of date</source>
        <translation>Todo el trabajo, desactualizado</translation>
    </message>
</context>
<context>
    <name>ui::VersionModel</name>
    <message>
        <source>%1, not complete</source>
        <translation>%1, incompleto</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>1 sheet</source>
        <translation>1 hoja</translation>
    </message>
    <message>
        <source>%1 sheets</source>
        <translation>%1 hojas</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Versión</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Guardada</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Programa</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Issued</source>
        <translation>Entregada</translation>
    </message>
</context>
<context>
    <name>ui::VersionWindow</name>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Lines of this version</source>
        <translation>Líneas de esta versión</translation>
    </message>
    <message>
        <source>by others</source>
        <translation>por otros</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>Step of the price</source>
        <translation>Paso del precio</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Cálculo</translation>
    </message>
    <message>
        <source>Steps of the price</source>
        <translation>Pasos del precio</translation>
    </message>
    <message>
        <source>Price before tax</source>
        <translation>Precio sin impuesto</translation>
    </message>
    <message>
        <source>Total with tax</source>
        <translation>Total con impuesto</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Versión %1</translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation>%1, versión %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, not complete</source>
        <translation>%1, incompleto</translation>
    </message>
    <message>
        <source>Total of this version</source>
        <translation>Total de esta versión</translation>
    </message>
    <message>
        <source>Saved %1 with Groundcourse %2. It is shown as it was saved; today&apos;s prices and today&apos;s program change nothing here.</source>
        <translation>Guardada %1 con Groundcourse %2. Se muestra como se guardó; los precios y el programa de hoy no cambian nada aquí.</translation>
    </message>
    <message>
        <source>%1 (%2), printed %3</source>
        <translation>%1 (%2), impresa %3</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>Mostrar %1</translation>
    </message>
    <message>
        <source>Work on from here</source>
        <translation>Seguir desde aquí</translation>
    </message>
    <message>
        <source>The job becomes what it was in this version; Undo brings back what it is now</source>
        <translation>El trabajo vuelve a ser lo que era en esta versión; Deshacer trae lo que es ahora</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
</TS>
