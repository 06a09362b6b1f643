<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>Catalogue</name>
    <message>
        <source>What is bought</source>
        <translation>Lo que se compra</translation>
    </message>
    <message>
        <source>Work and hauling</source>
        <translation>Mano de obra y acarreo</translation>
    </message>
    <message>
        <source>How it is built</source>
        <translation>Cómo se construye</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Reglas</translation>
    </message>
    <message>
        <source>Units and slabs</source>
        <translation>Adoquines y losas</translation>
    </message>
    <message>
        <source>Steps and treads</source>
        <translation>Escalones y huellas</translation>
    </message>
    <message>
        <source>Coping</source>
        <translation>Coronamiento</translation>
    </message>
    <message>
        <source>Kerbs and edging</source>
        <translation>Bordillos y retenes</translation>
    </message>
    <message>
        <source>Wall blocks</source>
        <translation>Bloques de muro</translation>
    </message>
    <message>
        <source>Caps</source>
        <translation>Tapas</translation>
    </message>
    <message>
        <source>Adhesive</source>
        <translation>Adhesivo</translation>
    </message>
    <message>
        <source>Reinforcement</source>
        <translation>Refuerzo</translation>
    </message>
    <message>
        <source>Stone, sand and soil</source>
        <translation>Piedra, arena y tierra</translation>
    </message>
    <message>
        <source>Joint sand and chips</source>
        <translation>Arena y gravilla de junta</translation>
    </message>
    <message>
        <source>Sealant and rod</source>
        <translation>Sellador y cordón</translation>
    </message>
    <message>
        <source>Fabric</source>
        <translation>Geotextil</translation>
    </message>
    <message>
        <source>Pipe and drainage</source>
        <translation>Tubería y drenaje</translation>
    </message>
    <message>
        <source>Light and conduit</source>
        <translation>Luz y tubo eléctrico</translation>
    </message>
    <message>
        <source>Concrete and mortar</source>
        <translation>Concreto y mortero</translation>
    </message>
    <message>
        <source>Protection and finish</source>
        <translation>Protección y acabado</translation>
    </message>
    <message>
        <source>Saws and blades</source>
        <translation>Sierras y discos</translation>
    </message>
    <message>
        <source>Labour rates</source>
        <translation>Rendimientos</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Trucks and tipping</source>
        <translation>Camiones y tiro</translation>
    </message>
    <message>
        <source>Suppliers</source>
        <translation>Proveedores</translation>
    </message>
    <message>
        <source>Deposits and allowances</source>
        <translation>Depósitos y provisiones</translation>
    </message>
    <message>
        <source>Build-ups</source>
        <translation>Capas</translation>
    </message>
    <message>
        <source>Junctions</source>
        <translation>Encuentros</translation>
    </message>
    <message>
        <source>Patterns</source>
        <translation>Aparejos</translation>
    </message>
    <message>
        <source>Limits and factors</source>
        <translation>Límites y factores</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Puntos de espera</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>Site rules</source>
        <translation>Reglas del sitio</translation>
    </message>
    <message>
        <source>“%1” was not taken. %2</source>
        <translation>«%1» no se tomó. %2</translation>
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
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Usual</translation>
    </message>
    <message>
        <source>Greatest</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>What it allows</source>
        <translation>Lo que permite</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde viene</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Kind of line</source>
        <translation>Clase de línea</translation>
    </message>
    <message>
        <source>Hours for one</source>
        <translation>Horas por unidad</translation>
    </message>
    <message>
        <source>One is a</source>
        <translation>Una es</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Holds where</source>
        <translation>Vale donde</translation>
    </message>
    <message>
        <source>The work</source>
        <translation>El trabajo</translation>
    </message>
    <message>
        <source>A delivery</source>
        <translation>Una entrega</translation>
    </message>
    <message>
        <source>Sells</source>
        <translation>Vende</translation>
    </message>
    <message>
        <source>Days before</source>
        <translation>Días de antelación</translation>
    </message>
    <message>
        <source>Least order</source>
        <translation>Pedido mínimo</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Junta</translation>
    </message>
    <message>
        <source>On one side</source>
        <translation>De un lado</translation>
    </message>
    <message>
        <source>On the other</source>
        <translation>Del otro</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>What meets</source>
        <translation>Lo que se encuentra</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>Rod</source>
        <translation>Cordón</translation>
    </message>
    <message>
        <source>Sealant</source>
        <translation>Sellador</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Relleno</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Borde</translation>
    </message>
    <message>
        <source>Besides</source>
        <translation>Además</translation>
    </message>
    <message>
        <source>What is built</source>
        <translation>Lo que se construye</translation>
    </message>
    <message>
        <source>What must be seen</source>
        <translation>Lo que debe verse</translation>
    </message>
    <message>
        <source>What must hold</source>
        <translation>Lo que debe cumplirse</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes de</translation>
    </message>
    <message>
        <source>Who looks</source>
        <translation>Quién revisa</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Applies where the job has</source>
        <translation>Se aplica donde el trabajo tiene</translation>
    </message>
    <message>
        <source>What to take care of</source>
        <translation>Con qué tener cuidado</translation>
    </message>
    <message>
        <source>Who decides</source>
        <translation>Quién decide</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Clave</translation>
    </message>
    <message>
        <source>Within</source>
        <translation>A menos de</translation>
    </message>
    <message>
        <source>Beside a</source>
        <translation>Junto a</translation>
    </message>
    <message>
        <source>It looks at</source>
        <translation>Mira</translation>
    </message>
    <message>
        <source>Times its own size</source>
        <translation>Veces su tamaño</translation>
    </message>
    <message>
        <source>It is a</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>What it asks</source>
        <translation>Lo que pide</translation>
    </message>
    <message>
        <source>This takes an amount of money, such as -28.00</source>
        <translation>Aquí va un importe, como -28.00</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>Supplied by others</source>
        <translation>Lo suministran otros</translation>
    </message>
    <message>
        <source>For a</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Price of the day</source>
        <translation>Precio del día</translation>
    </message>
    <message>
        <source>Breakage</source>
        <translation>Rotura</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Cota</translation>
    </message>
    <message>
        <source>Mass of one, kg</source>
        <translation>Masa de una, kg</translation>
    </message>
    <message>
        <source>Density, kg/m³</source>
        <translation>Densidad, kg/m³</translation>
    </message>
    <message>
        <source>Voids</source>
        <translation>Vacíos</translation>
    </message>
    <message>
        <source>Least that is sold</source>
        <translation>Lo mínimo que se vende</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Paquete</translation>
    </message>
    <message>
        <source>Pieces to a layer</source>
        <translation>Piezas por capa</translation>
    </message>
    <message>
        <source>Layers to a pack</source>
        <translation>Capas por paquete</translation>
    </message>
    <message>
        <source>Pieces to a pack</source>
        <translation>Piezas por paquete</translation>
    </message>
    <message>
        <source>Add a size</source>
        <translation>Añadir un tamaño</translation>
    </message>
    <message>
        <source>Add one, as name = value</source>
        <translation>Añadir uno, como nombre = valor</translation>
    </message>
    <message>
        <source>This takes a name and a value, such as porosity = 0.4</source>
        <translation>Aquí van un nombre y un valor, como porosity = 0.4</translation>
    </message>
    <message>
        <source>There is one of that name already: change it there</source>
        <translation>Ya hay uno con ese nombre: cámbielo allí</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Supplier’s number</source>
        <translation>Número del proveedor</translation>
    </message>
    <message>
        <source>Size and weight</source>
        <translation>Tamaño y peso</translation>
    </message>
    <message>
        <source>How it is sold</source>
        <translation>Cómo se vende</translation>
    </message>
    <message>
        <source>What the pack holds</source>
        <translation>Lo que trae el paquete</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Detalles</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regla</translation>
    </message>
    <message>
        <source>Source of the rule</source>
        <translation>Fuente de la regla</translation>
    </message>
    <message>
        <source>Rule and notes</source>
        <translation>Regla y notas</translation>
    </message>
    <message>
        <source>This takes L or W, a part of it such as L/2, or a length</source>
        <translation>Aquí va L o W, una parte como L/2, o una medida</translation>
    </message>
    <message>
        <source>Line %1: a piece is its size, its place and its extent in cells, such as unit 0 0 2 1</source>
        <translation>Línea %1: una pieza es su tamaño, su lugar y su extensión en celdas, como unit 0 0 2 1</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Past a free edge</source>
        <translation>Más allá de un borde libre</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Greatest lift</source>
        <translation>Mayor tongada</translation>
    </message>
    <message>
        <source>Move it up</source>
        <translation>Subirla</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Quitarla</translation>
    </message>
    <message>
        <source>Pieces: size, x, y, along, across, in cells</source>
        <translation>Piezas: tamaño, x, y, a lo largo, a lo ancho, en celdas</translation>
    </message>
    <message>
        <source>Cell along</source>
        <translation>Celda a lo largo</translation>
    </message>
    <message>
        <source>Cell across</source>
        <translation>Celda a lo ancho</translation>
    </message>
    <message>
        <source>Repeats after cells</source>
        <translation>Se repite tras celdas</translation>
    </message>
    <message>
        <source>Next row: cells along</source>
        <translation>Hilera siguiente: celdas a lo largo</translation>
    </message>
    <message>
        <source>Next row: cells across</source>
        <translation>Hilera siguiente: celdas a lo ancho</translation>
    </message>
    <message>
        <source>Turned by</source>
        <translation>Girado</translation>
    </message>
    <message>
        <source>Herringbone: length is two widths and a joint</source>
        <translation>Espina de pez: el largo es dos anchos y una junta</translation>
    </message>
    <message>
        <source>The repeat</source>
        <translation>La repetición</translation>
    </message>
    <message>
        <source>Units that fit</source>
        <translation>Piezas que encajan</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejo</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>Lies under</source>
        <translation>Va bajo</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Where water goes</source>
        <translation>A dónde va el agua</translation>
    </message>
    <message>
        <source>Layer %1, from the top</source>
        <translation>Capa %1, desde arriba</translation>
    </message>
    <message>
        <source>Add a layer</source>
        <translation>Añadir una capa</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Name in Spanish</source>
        <translation>Nombre en español</translation>
    </message>
    <message>
        <source>How it is known</source>
        <translation>Cómo se sabe</translation>
    </message>
    <message>
        <source>%1, 1 layer</source>
        <translation>%1, 1 capa</translation>
    </message>
    <message>
        <source>%1, %2 layers</source>
        <translation>%1, %2 capas</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>a lo más %1</translation>
    </message>
    <message>
        <source>, usual %1</source>
        <translation>, usual %1</translation>
    </message>
    <message>
        <source>%1 h a %2</source>
        <translation>%1 h por %2</translation>
    </message>
    <message>
        <source>The pattern, drawn</source>
        <translation>El aparejo, dibujado</translation>
    </message>
    <message>
        <source>The layers, drawn</source>
        <translation>Las capas, dibujadas</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>as it came</source>
        <translation>como vino</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>escrito</translation>
    </message>
    <message>
        <source>Price over the days</source>
        <translation>El precio a lo largo de los días</translation>
    </message>
    <message>
        <source>Prices so far</source>
        <translation>Precios hasta ahora</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
</context>
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
    <message>
        <source>Take the line out</source>
        <translation>Quitar la partida</translation>
    </message>
    <message>
        <source>It is taken: put it into the job</source>
        <translation>Se acepta: incluirla en el trabajo</translation>
    </message>
    <message>
        <source>Take an option</source>
        <translation>Aceptar una opción</translation>
    </message>
    <message>
        <source>In place of a part of the base</source>
        <translation>En lugar de una parte de la base</translation>
    </message>
    <message>
        <source>It brings</source>
        <translation>Trae</translation>
    </message>
    <message>
        <source>It leaves out</source>
        <translation>Omite</translation>
    </message>
    <message>
        <source>Add a line to it</source>
        <translation>Añadirle una partida</translation>
    </message>
    <message>
        <source>Option %1</source>
        <translation>Opción %1</translation>
    </message>
    <message>
        <source>Add an option of lines</source>
        <translation>Añadir una opción de partidas</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Opción</translation>
    </message>
    <message>
        <source>Without %1</source>
        <translation>Sin %1</translation>
    </message>
</context>
<context>
    <name>OrderWords</name>
    <message>
        <source>the owner&apos;s wish</source>
        <translation>deseo del dueño</translation>
    </message>
    <message>
        <source>hidden ground</source>
        <translation>terreno oculto</translation>
    </message>
    <message>
        <source>the site</source>
        <translation>la obra</translation>
    </message>
    <message>
        <source>an error of ours</source>
        <translation>un error nuestro</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Why, in your words</source>
        <translation>Por qué, con sus palabras</translation>
    </message>
    <message>
        <source>Asked for by</source>
        <translation>Pedido por</translation>
    </message>
    <message>
        <source>Date, as 2026-11-28</source>
        <translation>Fecha, como 2026-11-28</translation>
    </message>
    <message>
        <source>Days more</source>
        <translation>Días de más</translation>
    </message>
    <message>
        <source>What takes them</source>
        <translation>Qué los requiere</translation>
    </message>
    <message>
        <source>Contract as signed, with tax</source>
        <translation>Contrato firmado, con impuesto</translation>
    </message>
    <message>
        <source>The order</source>
        <translation>La orden</translation>
    </message>
    <message>
        <source>Stages that are done: no credit</source>
        <translation>Etapas terminadas: sin abono</translation>
    </message>
    <message>
        <source>Of the line</source>
        <translation>De la partida</translation>
    </message>
    <message>
        <source>Ordered or cut already %1</source>
        <translation>Ya pedido o cortado %1</translation>
    </message>
    <message>
        <source>Share of the credit kept back</source>
        <translation>Parte del abono que se retiene</translation>
    </message>
    <message>
        <source>Amount kept back beside it</source>
        <translation>Importe que se retiene además</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Add what was ordered or cut</source>
        <translation>Añadir lo ya pedido o cortado</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>Met on site %1</source>
        <translation>Hallado en obra %1</translation>
    </message>
    <message>
        <source>Of the quote&apos;s unit prices</source>
        <translation>De los precios unitarios de la oferta</translation>
    </message>
    <message>
        <source>Measured to date</source>
        <translation>Medido hasta la fecha</translation>
    </message>
    <message>
        <source>Charged by earlier orders</source>
        <translation>Cobrado en órdenes anteriores</translation>
    </message>
    <message>
        <source>Who measured, when</source>
        <translation>Quién midió y cuándo</translation>
    </message>
    <message>
        <source>Add what was met on site</source>
        <translation>Añadir lo hallado en obra</translation>
    </message>
    <message>
        <source>Row %1</source>
        <translation>Fila %1</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Price of one, at cost</source>
        <translation>Precio de uno, a coste</translation>
    </message>
    <message>
        <source>Take the row out</source>
        <translation>Quitar la fila</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmado por</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Add a row</source>
        <translation>Añadir una fila</translation>
    </message>
    <message>
        <source>Ticket %1, time and material</source>
        <translation>Parte %1, tiempo y material</translation>
    </message>
    <message>
        <source>Add a ticket</source>
        <translation>Añadir un parte</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>It was a credit</source>
        <translation>Fue un abono</translation>
    </message>
    <message>
        <source>Earlier order on paper %1</source>
        <translation>Orden anterior en papel %1</translation>
    </message>
    <message>
        <source>Add an earlier order on paper</source>
        <translation>Añadir una orden anterior en papel</translation>
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
    <name>RestoreWords</name>
    <message>
        <source>The book was not put back: %1</source>
        <translation>El libro no se ha restaurado: %1</translation>
    </message>
    <message>
        <source>The book is back as the backup has it; what it was before is among the backups</source>
        <translation>El libro vuelve a estar como en la copia; lo que era antes está entre las copias</translation>
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
    <message>
        <source>pictures are read by groundcourse-picture, which is not beside this program</source>
        <translation>las imágenes las lee groundcourse-picture, que no está junto a este programa</translation>
    </message>
    <message>
        <source>install the program anew</source>
        <translation>instale de nuevo el programa</translation>
    </message>
    <message>
        <source>there is no room to unpack the picture</source>
        <translation>no hay espacio para desempaquetar la imagen</translation>
    </message>
    <message>
        <source>the picture takes too long to read</source>
        <translation>la imagen tarda demasiado en leerse</translation>
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
    <message>
        <source>Enquiry and site visit…</source>
        <translation>Consulta y visita a la obra…</translation>
    </message>
    <message>
        <source>Prices of the book…</source>
        <translation>Precios del libro…</translation>
    </message>
    <message>
        <source>The last version at today&apos;s prices…</source>
        <translation>La última versión a precios de hoy…</translation>
    </message>
    <message>
        <source>The same job built otherwise…</source>
        <translation>El mismo trabajo hecho de otro modo…</translation>
    </message>
    <message>
        <source>Change order…</source>
        <translation>Orden de cambio…</translation>
    </message>
    <message>
        <source>What was really used…</source>
        <translation>Lo realmente usado…</translation>
    </message>
    <message>
        <source>Backups of the book…</source>
        <translation>Copias de seguridad del libro…</translation>
    </message>
    <message>
        <source>Print sheets…</source>
        <translation>Imprimir hojas…</translation>
    </message>
    <message>
        <source>The plan as a picture…</source>
        <translation>El plano como imagen…</translation>
    </message>
    <message>
        <source>Catalogue…</source>
        <translation>Catálogo…</translation>
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
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>m2</source>
        <translation>m2</translation>
    </message>
    <message>
        <source>m3</source>
        <translation>m3</translation>
    </message>
    <message>
        <source>t</source>
        <translation>t</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>job</source>
        <translation>trabajo</translation>
    </message>
    <message>
        <source>load</source>
        <translation>viaje</translation>
    </message>
    <message>
        <source>pallet</source>
        <translation>tarima</translation>
    </message>
    <message>
        <source>problem</source>
        <translation>problema</translation>
    </message>
    <message>
        <source>flag</source>
        <translation>aviso</translation>
    </message>
    <message>
        <source>notice</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>bedding</source>
        <translation>poner el asiento</translation>
    </message>
    <message>
        <source>base</source>
        <translation>base</translation>
    </message>
    <message>
        <source>sub-base</source>
        <translation>subbase</translation>
    </message>
    <message>
        <source>fabric</source>
        <translation>geotextil</translation>
    </message>
    <message>
        <source>mortar</source>
        <translation>mortero</translation>
    </message>
    <message>
        <source>slab</source>
        <translation>losa</translation>
    </message>
    <message>
        <source>mesh</source>
        <translation>malla</translation>
    </message>
    <message>
        <source>footing</source>
        <translation>zapata</translation>
    </message>
    <message>
        <source>collar</source>
        <translation>collar</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>varilla</translation>
    </message>
    <message>
        <source>backfill</source>
        <translation>relleno</translation>
    </message>
    <message>
        <source>stone</source>
        <translation>piedra</translation>
    </message>
    <message>
        <source>paving</source>
        <translation>pavimento</translation>
    </message>
    <message>
        <source>wall-base</source>
        <translation>base de muro</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>escalones</translation>
    </message>
    <message>
        <source>kerb</source>
        <translation>bordillo</translation>
    </message>
    <message>
        <source>pool</source>
        <translation>alberca</translation>
    </message>
    <message>
        <source>pipe</source>
        <translation>tubo</translation>
    </message>
    <message>
        <source>%1 Decided by: %2.</source>
        <translation>%1 Decide: %2.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1 drawn</source>
        <translation>%1 dibujados</translation>
    </message>
    <message>
        <source>%1 each: lift by two</source>
        <translation>%1 cada pieza: levantar entre dos</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <translation>%1 necesarios</translation>
    </message>
    <message>
        <source>%1 needed, %2 over</source>
        <translation>%1 necesarios, %2 de más</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 on each pallet</source>
        <translation>%1 en cada tarima</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <translation>%1, a %2</translation>
    </message>
    <message>
        <source>%1: %2 come out whole at the usual joint.</source>
        <translation>%1: %2 salen enteras con la junta usual.</translation>
    </message>
    <message>
        <source>%1: close each joint by %3 over %2 and they come out whole.</source>
        <translation>%1: cerrar cada junta %3 en %2 y salen enteras.</translation>
    </message>
    <message>
        <source>%1: coping, highest and lowest all round</source>
        <translation>%1: albardilla, lo más alto y lo más bajo en todo el contorno</translation>
    </message>
    <message>
        <source>%1: does not come out whole; the last one is cut to %2, or shared with the one before.</source>
        <translation>%1: no sale en piezas enteras; la última se corta a %2, o se reparte con la anterior.</translation>
    </message>
    <message>
        <source>%1: open each joint by %3 over %2 and they come out whole.</source>
        <translation>%1: abrir cada junta %3 en %2 y salen enteras.</translation>
    </message>
    <message>
        <source>1 in of sand</source>
        <translation>1 in de arena</translation>
    </message>
    <message>
        <source>3 ft behind the face hand plate only; no track on bare grid, 6 in of cover</source>
        <translation>a 3 ft tras la cara solo placa manual; sin orugas sobre malla descubierta, 6 in de cobertura</translation>
    </message>
    <message>
        <source>3 ft from an open edge (5 ft on government jobs)</source>
        <translation>3 ft del borde abierto (5 ft en obra pública)</translation>
    </message>
    <message>
        <source>A colour is made again but never the same: the lot is what a repair is matched by.</source>
        <translation>Un color se vuelve a fabricar, pero nunca igual: por el lote se empareja una reparación.</translation>
    </message>
    <message>
        <source>A crew of %1, %2 h a day; waiting for weather and trades not counted.</source>
        <translation>Cuadrilla de %1, %2 h al día; sin contar esperas por clima y otros oficios.</translation>
    </message>
    <message>
        <source>A licensed electrician made and tested it by the local edition of the code; some inspectors ask for a grid instead. Nobody cuts or moves it without an electrician.</source>
        <translation>La hizo y probó un electricista con licencia según la edición local del código; algunos inspectores piden una malla. Nadie la corta ni la mueve sin electricista.</translation>
    </message>
    <message>
        <source>A loaded truck breaks drives, kerbs, pipes and septic lids: the way is looked at before it comes, and axle limits of the road are the driver&apos;s to keep.</source>
        <translation>Un camión cargado rompe entradas, bordillos, tubos y tapas sépticas: el camino se revisa antes de que llegue, y los límites por eje de la vía los cuida el chofer.</translation>
    </message>
    <message>
        <source>A pallet counts as %1 x %2 with an aisle of %3 along it, a pile as a cone of 35° (common practice).</source>
        <translation>Una tarima cuenta como %1 x %2 con un pasillo de %3 a lo largo, un montón como un cono de 35° (práctica común).</translation>
    </message>
    <message>
        <source>A running measure along the line is an offset of nothing.</source>
        <translation>Una medida corrida sobre la línea es un desvío de cero.</translation>
    </message>
    <message>
        <source>All at once?</source>
        <translation>¿Todo a la vez?</translation>
    </message>
    <message>
        <source>All stages</source>
        <translation>Todas las etapas</translation>
    </message>
    <message>
        <source>Along the base line</source>
        <translation>Por la línea base</translation>
    </message>
    <message>
        <source>Along the line</source>
        <translation>Por la línea</translation>
    </message>
    <message>
        <source>Along the row: %1</source>
        <translation>Por la hilada: %1</translation>
    </message>
    <message>
        <source>Along the rows</source>
        <translation>A lo largo de las hiladas</translation>
    </message>
    <message>
        <source>An infiltrating base keeps 10 ft from a foundation and 100 ft from a well; against a pool shell the pool builder decides.</source>
        <translation>Una base que infiltra queda a 10 ft de un cimiento y a 100 ft de un pozo; junto al casco de una piscina decide su constructor.</translation>
    </message>
    <message>
        <source>As it was drawn: what came out otherwise is marked by hand</source>
        <translation>Como se dibujó: lo que salió distinto se marca a mano</translation>
    </message>
    <message>
        <source>As taped</source>
        <translation>Según cinta</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Backfill round pool and house: how it was placed, probed, its area on the plan</source>
        <translation>Relleno alrededor de piscina y casa: cómo se colocó, sondeado, su área en el plano</translation>
    </message>
    <message>
        <source>Base line %1: %2, from its start as drawn.</source>
        <translation>Línea base %1: %2, desde su inicio según el dibujo.</translation>
    </message>
    <message>
        <source>Bearing soil, depth and width of the trench, level of the pad</source>
        <translation>Suelo de apoyo, profundidad y ancho de la zanja, nivel de la plantilla</translation>
    </message>
    <message>
        <source>Before anything is broken out: what lies in or under it (pipe, cable, gas, bars under tension) is asked for and located, and nothing that holds up a wall, a pool or a neighbour is taken away without a licensed engineer.</source>
        <translation>Antes de demoler: se pregunta y localiza lo que hay dentro o debajo (tubo, cable, gas, barras tensadas), y nada que sostenga un muro, una piscina o a un vecino se quita sin un ingeniero con licencia.</translation>
    </message>
    <message>
        <source>Begin and end on the bench mark: what it does not close by is said.</source>
        <translation>Empezar y terminar en el banco de nivel: se anota el error de cierre.</translation>
    </message>
    <message>
        <source>Between</source>
        <translation>Entre</translation>
    </message>
    <message>
        <source>Blocks and caps over 51 lb (23 kg): two people or a lifter.</source>
        <translation>Bloques y tapas de más de 23 kg (51 lb): dos personas o elevador.</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Caja</translation>
    </message>
    <message>
        <source>Bonding</source>
        <translation>Unión equipotencial</translation>
    </message>
    <message>
        <source>Bonding of</source>
        <translation>Unión equipotencial de</translation>
    </message>
    <message>
        <source>Bonding ring in place with its ties, photographed</source>
        <translation>Anillo equipotencial colocado con sus amarres, fotografiado</translation>
    </message>
    <message>
        <source>Both diagonals of a rectangle read the same.</source>
        <translation>Las dos diagonales de un rectángulo leen lo mismo.</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Comprado</translation>
    </message>
    <message>
        <source>Broken</source>
        <translation>Roto</translation>
    </message>
    <message>
        <source>Buried services</source>
        <translation>Servicios enterrados</translation>
    </message>
    <message>
        <source>Caps laid out dry from the visible ends, overhang even, no joint over a joint, closers in the middle; tops swept and dry</source>
        <translation>Tapas presentadas en seco desde los extremos visibles, vuelo parejo, sin junta sobre junta, ajustes al centro; caras barridas y secas</translation>
    </message>
    <message>
        <source>Caps on standing bars and stakes.</source>
        <translation>Capuchones en varillas y estacas de pie.</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Cuidado</translation>
    </message>
    <message>
        <source>Carries at most</source>
        <translation>Carga máxima</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificado</translation>
    </message>
    <message>
        <source>Changed levels and measures</source>
        <translation>Niveles y medidas cambiados</translation>
    </message>
    <message>
        <source>Cleaning</source>
        <translation>Limpieza</translation>
    </message>
    <message>
        <source>Close-out</source>
        <translation>Cierre de obra</translation>
    </message>
    <message>
        <source>Condition of the pool beam</source>
        <translation>Estado de la viga de la piscina</translation>
    </message>
    <message>
        <source>Coping: bed cured, level all round, overhang, joint to the deck clean to full depth, no deck stone on the beam</source>
        <translation>Albardilla: cama fraguada, a nivel en todo el contorno, vuelo, junta con la terraza limpia a toda profundidad, sin piedra de terraza sobre la viga</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contado</translation>
    </message>
    <message>
        <source>Counted, short, broken</source>
        <translation>Contado, faltante, roto</translation>
    </message>
    <message>
        <source>Crew lead</source>
        <translation>Encargado</translation>
    </message>
    <message>
        <source>Crew list</source>
        <translation>Lista de la cuadrilla</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Lista de cortes</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Days of the crew</source>
        <translation>Días de la cuadrilla</translation>
    </message>
    <message>
        <source>De-icing salt</source>
        <translation>Sal de deshielo</translation>
    </message>
    <message>
        <source>Deepest water after the wait, where</source>
        <translation>Agua más honda tras la espera, dónde</translation>
    </message>
    <message>
        <source>Depth said</source>
        <translation>Profundidad indicada</translation>
    </message>
    <message>
        <source>Diagonal of</source>
        <translation>Diagonal de</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>Drain behind the wall: holes down, fall to its outlets, outlets open below the invert; water poured in comes out</source>
        <translation>Dren tras el muro: agujeros abajo, pendiente a sus salidas, salidas abiertas bajo el fondo; el agua vertida sale</translation>
    </message>
    <message>
        <source>Drop spots</source>
        <translation>Lugares de descarga</translation>
    </message>
    <message>
        <source>Each layer of reinforcement: its course, length and strong way, pulled tight, no wrinkles</source>
        <translation>Cada capa de refuerzo: su hilada, largo y sentido fuerte, bien estirada, sin arrugas</translation>
    </message>
    <message>
        <source>Each lift of open stone: thickness, passes counted, stone no longer moves under the plate</source>
        <translation>Cada capa de piedra abierta: espesor, pasadas contadas, la piedra ya no se mueve bajo la placa</translation>
    </message>
    <message>
        <source>Each lift: thickness, passes counted, moisture</source>
        <translation>Cada capa: espesor, pasadas contadas, humedad</translation>
    </message>
    <message>
        <source>Each load</source>
        <translation>Cada viaje</translation>
    </message>
    <message>
        <source>Each row is moved by %1 along against the one before.</source>
        <translation>Cada hilada se corre %1 respecto a la anterior.</translation>
    </message>
    <message>
        <source>Earth goes back in a trench in thin layers, nobody in it while a machine fills; the pipe is covered by hand first.</source>
        <translation>La tierra vuelve a la zanja en capas delgadas, nadie dentro mientras llena una máquina; el tubo se tapa primero a mano.</translation>
    </message>
    <message>
        <source>Electrician</source>
        <translation>Electricista</translation>
    </message>
    <message>
        <source>Empty: what was measured, counted and changed on site</source>
        <translation>En blanco: lo medido, contado y cambiado en obra</translation>
    </message>
    <message>
        <source>Emptying the pool while the ground beside it is open can float the shell or cave in its wall: the pool builder or an engineer decides.</source>
        <translation>Vaciar la piscina con el terreno abierto al lado puede hacer flotar el casco o derrumbar su pared: decide el constructor de la piscina o un ingeniero.</translation>
    </message>
    <message>
        <source>End level</source>
        <translation>Nivel final</translation>
    </message>
    <message>
        <source>Engineer&apos;s papers for the walls</source>
        <translation>Papeles del ingeniero para los muros</translation>
    </message>
    <message>
        <source>Faces of trench and cut, every day and after rain</source>
        <translation>Caras de zanja y corte, cada día y después de lluvia</translation>
    </message>
    <message>
        <source>Farthest way, by the way in</source>
        <translation>Trayecto más largo, por el acceso</translation>
    </message>
    <message>
        <source>Farthest way, straight</source>
        <translation>Trayecto más largo, en línea recta</translation>
    </message>
    <message>
        <source>Field sheet</source>
        <translation>Hoja de campo</translation>
    </message>
    <message>
        <source>Final levels</source>
        <translation>Niveles finales</translation>
    </message>
    <message>
        <source>First pallets</source>
        <translation>Primeras tarimas</translation>
    </message>
    <message>
        <source>For the driver</source>
        <translation>Para el chofer</translation>
    </message>
    <message>
        <source>For what</source>
        <translation>Para qué</translation>
    </message>
    <message>
        <source>Fore</source>
        <translation>Adelante</translation>
    </message>
    <message>
        <source>Formation</source>
        <translation>Subrasante</translation>
    </message>
    <message>
        <source>Formation that water soaks into: not rolled, driven on or smeared; probed by hand, soft spots marked</source>
        <translation>Subrasante que infiltra: sin rodillo, sin tránsito, sin embarrar; probada a mano, zonas blandas marcadas</translation>
    </message>
    <message>
        <source>Formation: proof-rolled or probed, soft spots marked with their size, fall towards the outlet</source>
        <translation>Subrasante: probada con rodillo o varilla, zonas blandas marcadas con su tamaño, pendiente hacia la salida</translation>
    </message>
    <message>
        <source>Found at</source>
        <translation>Hallado a</translation>
    </message>
    <message>
        <source>From corner to corner</source>
        <translation>De esquina a esquina</translation>
    </message>
    <message>
        <source>From the start line, after</source>
        <translation>Desde la línea de arranque, después de</translation>
    </message>
    <message>
        <source>Goes to</source>
        <translation>Va a</translation>
    </message>
    <message>
        <source>Ground there</source>
        <translation>Terreno ahí</translation>
    </message>
    <message>
        <source>Ground-fault protection on every corded saw and mixer.</source>
        <translation>Protección contra falla a tierra en cada sierra y mezcladora con cable.</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Haul away</source>
        <translation>Acarrear fuera de la obra</translation>
    </message>
    <message>
        <source>Highest lip, where</source>
        <translation>Resalte más alto, dónde</translation>
    </message>
    <message>
        <source>Hold point</source>
        <translation>Punto de espera</translation>
    </message>
    <message>
        <source>Hose test</source>
        <translation>Prueba con manguera</translation>
    </message>
    <message>
        <source>Hose test: water runs off, outlets run, lips</source>
        <translation>Prueba con manguera: el agua escurre, las salidas corren, resaltes</translation>
    </message>
    <message>
        <source>Hours and days</source>
        <translation>Horas y días</translation>
    </message>
    <message>
        <source>Hours planned</source>
        <translation>Horas previstas</translation>
    </message>
    <message>
        <source>Hours worked</source>
        <translation>Horas trabajadas</translation>
    </message>
    <message>
        <source>How each thing is built up; walls course by course</source>
        <translation>Cómo se compone cada cosa; los muros hilada por hilada</translation>
    </message>
    <message>
        <source>How every number came about</source>
        <translation>De dónde sale cada número</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>IRC R109.1.2, town page</source>
        <translation>IRC R109.1.2, página del municipio</translation>
    </message>
    <message>
        <source>IRC R311.7.5, county page Stairways</source>
        <translation>IRC R311.7.5, página del condado sobre escaleras</translation>
    </message>
    <message>
        <source>Inspection record</source>
        <translation>Registro de revisiones</translation>
    </message>
    <message>
        <source>It runs</source>
        <translation>Trabaja</translation>
    </message>
    <message>
        <source>Jointing sand can move down into open chips: use sand that sets, fill in two passes.</source>
        <translation>La arena de juntas puede bajar a la gravilla abierta: usar arena que fragüe, llenar en dos pasadas.</translation>
    </message>
    <message>
        <source>Jointing sand that sets stays on the surface as haze if it is wetted before it is blown or swept clean.</source>
        <translation>La arena que fragua deja velo en la superficie si se moja antes de soplarla o barrerla bien.</translation>
    </message>
    <message>
        <source>Kept for repairs</source>
        <translation>Guardado para reparar</translation>
    </message>
    <message>
        <source>Layers of reinforcement are those that the engineer gave; none is moved, shortened or cut for a post, a pipe or a tree without asking.</source>
        <translation>Las capas de refuerzo son las que dio el ingeniero; ninguna se mueve, acorta ni corta por un poste, un tubo o un árbol sin preguntar.</translation>
    </message>
    <message>
        <source>Left or right</source>
        <translation>Izquierda o derecha</translation>
    </message>
    <message>
        <source>Level at</source>
        <translation>Nivel en</translation>
    </message>
    <message>
        <source>Levels read</source>
        <translation>Niveles leídos</translation>
    </message>
    <message>
        <source>Lights, pumps and spouts near water: a licensed electrician connects and bonds them by the local code; ground-fault protection on their circuits; off and locked while hands are in the water.</source>
        <translation>Luces, bombas y caños cerca del agua: un electricista con licencia los conecta y une según el código local; protección contra falla a tierra en sus circuitos; apagados y bloqueados mientras haya manos en el agua.</translation>
    </message>
    <message>
        <source>Limits are those of the sources named. Local code, the permit and the engineer&apos;s papers stand over them: the stricter one holds.</source>
        <translation>Los límites son los de las fuentes nombradas. El código local, el permiso y los papeles del ingeniero están por encima: rige el más estricto.</translation>
    </message>
    <message>
        <source>Line and level of the first course; then batter, line and stone every third course</source>
        <translation>Línea y nivel de la primera hilada; luego desplome, línea y piedra cada tres hiladas</translation>
    </message>
    <message>
        <source>Line from</source>
        <translation>Línea desde</translation>
    </message>
    <message>
        <source>Line to</source>
        <translation>Línea hasta</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Viajes</translation>
    </message>
    <message>
        <source>Loads are split evenly; two materials never share a body. What has no weight is not in the weights.</source>
        <translation>Los viajes se reparten por igual; dos materiales nunca comparten caja. Lo que no tiene peso no entra en los pesos.</translation>
    </message>
    <message>
        <source>Loads by stage</source>
        <translation>Viajes por etapa</translation>
    </message>
    <message>
        <source>Locate ticket: number and date noted, marks seen and photographed, owner asked about private lines</source>
        <translation>Solicitud de localización: número y fecha anotados, marcas vistas y fotografiadas, propietario consultado sobre líneas privadas</translation>
    </message>
    <message>
        <source>Look at it again on</source>
        <translation>Revisar de nuevo el</translation>
    </message>
    <message>
        <source>Looked at by</source>
        <translation>Revisado por</translation>
    </message>
    <message>
        <source>Lot, day of making</source>
        <translation>Lote, día de fabricación</translation>
    </message>
    <message>
        <source>Lot, ticket</source>
        <translation>Lote, boleta</translation>
    </message>
    <message>
        <source>Machine or tool</source>
        <translation>Máquina o herramienta</translation>
    </message>
    <message>
        <source>Machines and tools</source>
        <translation>Máquinas y herramientas</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hecha</translation>
    </message>
    <message>
        <source>Mark north, the house and what each square is.</source>
        <translation>Marcar el norte, la casa y cuánto es cada cuadro.</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>Moved, mended by</source>
        <translation>Movido, reparado por</translation>
    </message>
    <message>
        <source>Muriatic acid and sealers stay away from pool water and from coping that is not cured.</source>
        <translation>Ácido muriático y selladores lejos del agua de la piscina y de la albardilla sin fraguar.</translation>
    </message>
    <message>
        <source>NEC 680, as quoted</source>
        <translation>NEC 680, según cita</translation>
    </message>
    <message>
        <source>NEC 680.26, as quoted</source>
        <translation>NEC 680.26, según cita</translation>
    </message>
    <message>
        <source>Next visit on</source>
        <translation>Próxima visita el</translation>
    </message>
    <message>
        <source>No area of this job is laid with units yet: there is nothing to start.</source>
        <translation>Ningún área de este trabajo lleva piezas todavía: no hay nada que arrancar.</translation>
    </message>
    <message>
        <source>No drop spot is drawn: nobody has said yet where pallets, stone and spoil may stand. Draw it, or mark it here by hand before the first truck.</source>
        <translation>No hay lugar de descarga dibujado: nadie ha dicho dónde pueden ir tarimas, piedra y tierra. Dibujarlo, o marcarlo aquí a mano antes del primer camión.</translation>
    </message>
    <message>
        <source>No dry sweeping or blowing of sand without capture where it adds to dust.</source>
        <translation>No barrer ni soplar arena en seco sin captura donde levante polvo.</translation>
    </message>
    <message>
        <source>Nobody works in a trench or cut that may cave in: protection from 5 ft of depth, less in poor soil; a way out within 25 ft from 4 ft; spoil and machines 2 ft back from the edge; nobody alone.</source>
        <translation>Nadie trabaja en zanja o corte que pueda derrumbarse: protección desde 5 ft de profundidad, menos en suelo malo; salida a menos de 25 ft desde 4 ft; tierra y máquinas a 2 ft del borde; nadie solo.</translation>
    </message>
    <message>
        <source>Nobody works under a cut bank that may cave in: protection from 5 ft of depth, less in poor soil; a way out within 25 ft from 4 ft; spoil 2 ft back from the edge.</source>
        <translation>Nadie trabaja bajo un talud que pueda derrumbarse: protección desde 5 ft de profundidad, menos en suelo malo; salida a menos de 25 ft desde 4 ft; tierra a 2 ft del borde.</translation>
    </message>
    <message>
        <source>Nothing is brought to this job yet.</source>
        <translation>Todavía no se trae nada a este trabajo.</translation>
    </message>
    <message>
        <source>Nothing is built in this job yet: there is nothing to bring.</source>
        <translation>Todavía no se construye nada en este trabajo: no hay nada que traer.</translation>
    </message>
    <message>
        <source>Nothing is built in this job yet: there is nothing to hand over.</source>
        <translation>Todavía no se construye nada en este trabajo: no hay nada que entregar.</translation>
    </message>
    <message>
        <source>Nothing is built in this job yet: there is nothing to look at.</source>
        <translation>Todavía no se construye nada en este trabajo: no hay nada que revisar.</translation>
    </message>
    <message>
        <source>Nothing is covered before it was looked at</source>
        <translation>Nada se tapa antes de revisarlo</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Offsets and running measures</source>
        <translation>Desvíos y medidas corridas</translation>
    </message>
    <message>
        <source>On</source>
        <translation>El</translation>
    </message>
    <message>
        <source>On pallets</source>
        <translation>En tarimas</translation>
    </message>
    <message>
        <source>On site</source>
        <translation>En obra</translation>
    </message>
    <message>
        <source>On this plan: %1. Decided by: %2.</source>
        <translation>En este plano: %1. Decide: %2.</translation>
    </message>
    <message>
        <source>One-call ticket runs out: note its last day and renew it before digging goes on.</source>
        <translation>La solicitud de localización vence: anotar su último día y renovarla antes de seguir excavando.</translation>
    </message>
    <message>
        <source>Only hand plates within 3 ft behind the face; machines and pallets stay further back than the wall is high while it is built.</source>
        <translation>Solo placas manuales a menos de 3 ft tras la cara; máquinas y tarimas quedan más atrás que la altura del muro mientras se construye.</translation>
    </message>
    <message>
        <source>Open at least three pallets of a unit at once and take from all of them, so that the colours mix.</source>
        <translation>Abrir a la vez por lo menos tres tarimas de una pieza y tomar de todas, para que se mezclen los colores.</translation>
    </message>
    <message>
        <source>Open base: soil under it not smeared, geotextile at the bottom and up the sides, outlet open</source>
        <translation>Base abierta: suelo debajo sin embarrar, geotextil en el fondo y los costados, salida abierta</translation>
    </message>
    <message>
        <source>Open bedding settled first, then screeded on pipes with a board, not walked on</source>
        <translation>Asiento abierto asentado primero, luego enrasado sobre tubos con regla, sin pisar</translation>
    </message>
    <message>
        <source>Open pool: cover it, guard it or keep it full; nobody works beside it alone.</source>
        <translation>Piscina abierta: cubrirla, protegerla o mantenerla llena; nadie trabaja solo a su lado.</translation>
    </message>
    <message>
        <source>Open, runs</source>
        <translation>Abierta, corre</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Other visits</source>
        <translation>Otras visitas</translation>
    </message>
    <message>
        <source>Out from it</source>
        <translation>Hacia afuera</translation>
    </message>
    <message>
        <source>Out from the start line</source>
        <translation>Desde la línea de arranque hacia afuera</translation>
    </message>
    <message>
        <source>Out from the water&apos;s edge</source>
        <translation>Desde el borde del agua</translation>
    </message>
    <message>
        <source>Out: %1</source>
        <translation>Hacia afuera: %1</translation>
    </message>
    <message>
        <source>Outlet of</source>
        <translation>Salida de</translation>
    </message>
    <message>
        <source>Outlets</source>
        <translation>Salidas</translation>
    </message>
    <message>
        <source>Outlets that ran</source>
        <translation>Salidas que corrieron</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Propietario</translation>
    </message>
    <message>
        <source>Pallet</source>
        <translation>Tarima</translation>
    </message>
    <message>
        <source>Pallet by pallet</source>
        <translation>Tarima por tarima</translation>
    </message>
    <message>
        <source>Pallet places</source>
        <translation>Lugares para tarimas</translation>
    </message>
    <message>
        <source>Pallets with aisle</source>
        <translation>Tarimas con pasillo</translation>
    </message>
    <message>
        <source>Pallets, stone and spoil stay off the dig and 2 ft (0.6 m) back from its edge, off roots and septic fields, as far behind a wall as it is high and as far from a pool as its shell is deep. No load is lifted within 10 ft (3 m) of an overhead line; local rules may ask for more.</source>
        <translation>Tarimas, piedra y tierra quedan fuera de la excavación y a 0.6 m (2 ft) de su borde, fuera de raíces y campos sépticos, tan lejos detrás de un muro como su altura y tan lejos de una piscina como la profundidad de su casco. No se iza carga a menos de 3 m (10 ft) de una línea aérea; las normas locales pueden pedir más.</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Papers handed over</source>
        <translation>Papeles entregados</translation>
    </message>
    <message>
        <source>Permit closed, if there was one</source>
        <translation>Permiso cerrado, si lo hubo</translation>
    </message>
    <message>
        <source>Permit on site, neighbour and lot line pegs seen, existing damage photographed</source>
        <translation>Permiso en obra, mojones de vecino y lindero vistos, daños existentes fotografiados</translation>
    </message>
    <message>
        <source>Photo, ticket</source>
        <translation>Foto, boleta</translation>
    </message>
    <message>
        <source>Photos of what is covered</source>
        <translation>Fotos de lo que quedó tapado</translation>
    </message>
    <message>
        <source>Pieces on each</source>
        <translation>Piezas en cada una</translation>
    </message>
    <message>
        <source>Pieces over 51 lb (23 kg): two people or a lifter.</source>
        <translation>Piezas de más de 23 kg (51 lb): dos personas o elevador.</translation>
    </message>
    <message>
        <source>Piles</source>
        <translation>Montones</translation>
    </message>
    <message>
        <source>Pipe, channel, sleeve</source>
        <translation>Tubo, canaleta, camisa</translation>
    </message>
    <message>
        <source>Pipe: fall by level, holes down, outlet below its invert and open, water poured in comes out, cleanouts reachable</source>
        <translation>Tubo: pendiente con nivel, agujeros abajo, salida más baja que su fondo y abierta, el agua vertida sale, registros accesibles</translation>
    </message>
    <message>
        <source>Pipes, channels, sleeves</source>
        <translation>Tubos, canaletas, camisas</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plano</translation>
    </message>
    <message>
        <source>Plate kept back from an open edge; slabs with a roller attachment, never a bare plate</source>
        <translation>Placa lejos del borde abierto; losas con rodillos, nunca placa desnuda</translation>
    </message>
    <message>
        <source>Points by two tapes</source>
        <translation>Puntos con dos cintas</translation>
    </message>
    <message>
        <source>Pool barrier kept closed while work is going on</source>
        <translation>Barrera de la piscina cerrada mientras dura la obra</translation>
    </message>
    <message>
        <source>Pool barrier not checked: where none is drawn nothing is known of it. It stays at least 48 in high on its outside, and nothing new beside it helps anyone over.</source>
        <translation>Barrera de la piscina sin revisar: donde no está dibujada no se sabe nada de ella. Queda por fuera de al menos 48 in de alto, y nada nuevo a su lado ayuda a pasarla.</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Corregido</translation>
    </message>
    <message>
        <source>Quote</source>
        <translation>Cotización</translation>
    </message>
    <message>
        <source>Rain and feet kept off until</source>
        <translation>Sin lluvia ni pisadas hasta</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leído</translation>
    </message>
    <message>
        <source>Record of hold points</source>
        <translation>Registro de puntos de espera</translation>
    </message>
    <message>
        <source>Release of lien</source>
        <translation>Liberación de gravamen</translation>
    </message>
    <message>
        <source>Ring</source>
        <translation>Anillo</translation>
    </message>
    <message>
        <source>Rod in, bond broken, sides clean, depth by gauge; no filler or mortar in the expansion joint</source>
        <translation>Cordón puesto, adherencia cortada, caras limpias, profundidad con calibre; sin relleno ni mortero en la junta de expansión</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Room needed</source>
        <translation>Espacio necesario</translation>
    </message>
    <message>
        <source>Roots: no digging, driving or storing within 1.25 ft for each inch of trunk, at least 6 ft.</source>
        <translation>Raíces: no excavar, transitar ni acopiar a menos de 1.25 ft por pulgada de tronco, mínimo 6 ft.</translation>
    </message>
    <message>
        <source>Sand bedding screeded on pipes with a board, not compacted, not walked on</source>
        <translation>Asiento de arena enrasado sobre tubos con regla, sin compactar, sin pisar</translation>
    </message>
    <message>
        <source>Saw slurry never goes into a storm inlet or into the joints.</source>
        <translation>El lodo de la sierra nunca va a un sumidero pluvial ni a las juntas.</translation>
    </message>
    <message>
        <source>Sealer</source>
        <translation>Sellador</translation>
    </message>
    <message>
        <source>Sections and elevations</source>
        <translation>Cortes y alzados</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Sirve a</translation>
    </message>
    <message>
        <source>Set down at</source>
        <translation>Descargar en</translation>
    </message>
    <message>
        <source>Setting out and levels</source>
        <translation>Replanteo y niveles</translation>
    </message>
    <message>
        <source>Setting times, cleaners, sealers and de-icing salt go by the sheet of each product, handed over with this one; what it says is written here.</source>
        <translation>Tiempos de fraguado, limpiadores, selladores y sal de deshielo van según la hoja de cada producto, entregada con esta; lo que dice se anota aquí.</translation>
    </message>
    <message>
        <source>Short</source>
        <translation>Faltante</translation>
    </message>
    <message>
        <source>Silica: blocks and caps are cut wet or with dust captured at the blade; dust is vacuumed or wetted, never swept dry.</source>
        <translation>Sílice: bloques y tapas se cortan en húmedo o con captura en el disco; el polvo se aspira o se moja, nunca se barre en seco.</translation>
    </message>
    <message>
        <source>Silica: cut wet or with capture; hand-held wet saw outdoors over 4 h in a shift needs a respirator, said on the day it happens; no dry sweeping.</source>
        <translation>Sílice: cortar en húmedo o con captura; sierra manual en húmedo al aire libre por más de 4 h en un turno exige respirador, y se avisa el mismo día; no barrer en seco.</translation>
    </message>
    <message>
        <source>Silica: slabs are sawn and broken wet or with dust captured; slurry is kept out of storm inlets, rubble is wetted before it is loaded.</source>
        <translation>Sílice: las losas se cortan y rompen en húmedo o con captura; el lodo no llega a sumideros, el escombro se moja antes de cargarlo.</translation>
    </message>
    <message>
        <source>Silica: step blocks and treads are cut wet or with dust captured at the blade; dust is vacuumed or wetted, never swept dry.</source>
        <translation>Sílice: escalones y huellas se cortan en húmedo o con captura en el disco; el polvo se aspira o se moja, nunca se barre en seco.</translation>
    </message>
    <message>
        <source>Sketch</source>
        <translation>Croquis</translation>
    </message>
    <message>
        <source>Sleeves in place and capped, ends measured on the plan</source>
        <translation>Camisas colocadas y tapadas, extremos medidos en el plano</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>Square corner at the start: %1 along the start line, %2 out, %3 across.</source>
        <translation>Escuadra en el arranque: %1 por la línea de arranque, %2 hacia afuera, %3 en diagonal.</translation>
    </message>
    <message>
        <source>Square, and string at every fifth course against the running measures; units from three pallets or more; all cuts in, chips out</source>
        <translation>Escuadra, e hilo cada cinco hiladas contra las medidas corridas; piezas de tres tarimas o más; todos los cortes puestos, esquirlas fuera</translation>
    </message>
    <message>
        <source>Square?</source>
        <translation>¿A escuadra?</translation>
    </message>
    <message>
        <source>Staging and deliveries</source>
        <translation>Acopio y entregas</translation>
    </message>
    <message>
        <source>Start level</source>
        <translation>Nivel inicial</translation>
    </message>
    <message>
        <source>Start only when the hold points of these stages are signed: %1.</source>
        <translation>Empezar solo cuando estén firmados los puntos de espera de estas etapas: %1.</translation>
    </message>
    <message>
        <source>Start points and rows</source>
        <translation>Puntos de arranque e hiladas</translation>
    </message>
    <message>
        <source>Start sheet</source>
        <translation>Hoja de arranque</translation>
    </message>
    <message>
        <source>Step blocks, treads and kerbs over 51 lb (23 kg): two people, a clamp or a lifter; nobody below a hanging block, feet and fingers clear of its bed.</source>
        <translation>Escalones, huellas y bordillos de más de 23 kg (51 lb): dos personas, pinza o elevador; nadie bajo un bloque colgado, pies y dedos fuera de su cama.</translation>
    </message>
    <message>
        <source>Steps: every riser and tread measured from the finished landing down; each block on its pad, none rocking</source>
        <translation>Escalones: cada contrahuella y huella medida desde el descanso terminado hacia abajo; cada bloque en su plantilla, ninguno baila</translation>
    </message>
    <message>
        <source>Steps: formation firm, pads level along and falling to the front by what the treads fall, lowest riser as on the plan</source>
        <translation>Escalones: subrasante firme, plantillas a nivel a lo largo y con la caída de las huellas al frente, contrahuella inferior según plano</translation>
    </message>
    <message>
        <source>Supplied by others, ask when it comes: %1, %2.</source>
        <translation>Lo suministran otros, preguntar cuándo llega: %1, %2.</translation>
    </message>
    <message>
        <source>Taped from</source>
        <translation>Medido desde</translation>
    </message>
    <message>
        <source>Taped from two fixed points before it was covered; bends, cleanouts and caps in the sketch.</source>
        <translation>Medido con cinta desde dos puntos fijos antes de taparlo; codos, registros y tapones en el croquis.</translation>
    </message>
    <message>
        <source>Tested on</source>
        <translation>Probado el</translation>
    </message>
    <message>
        <source>The hand-held saw runs %1 here: over 4 h of it in a shift needs a respirator, said on the day it happens (29 CFR 1926.1153, Table 1; local rules decide).</source>
        <translation>La sierra manual trabaja aquí %1: más de 4 h en un turno exigen respirador, y se avisa el mismo día (29 CFR 1926.1153, tabla 1; deciden las normas locales).</translation>
    </message>
    <message>
        <source>The person named on a point looks at it and signs; nobody signs for another.</source>
        <translation>La persona nombrada en un punto lo revisa y firma; nadie firma por otro.</translation>
    </message>
    <message>
        <source>The rows are turned %1° to the left of the base line.</source>
        <translation>Las hiladas giran %1° a la izquierda de la línea base.</translation>
    </message>
    <message>
        <source>The rows are turned %1° to the left of the plan&apos;s east.</source>
        <translation>Las hiladas giran %1° a la izquierda del este del plano.</translation>
    </message>
    <message>
        <source>The rows are turned %1° to the right of the base line.</source>
        <translation>Las hiladas giran %1° a la derecha de la línea base.</translation>
    </message>
    <message>
        <source>The rows are turned %1° to the right of the plan&apos;s east.</source>
        <translation>Las hiladas giran %1° a la derecha del este del plano.</translation>
    </message>
    <message>
        <source>The rows run along the base line.</source>
        <translation>Las hiladas corren a lo largo de la línea base.</translation>
    </message>
    <message>
        <source>The rows run along the plan&apos;s east.</source>
        <translation>Las hiladas corren hacia el este del plano.</translation>
    </message>
    <message>
        <source>The rows run square to the base line.</source>
        <translation>Las hiladas corren a escuadra con la línea base.</translation>
    </message>
    <message>
        <source>The rows run square to the plan&apos;s east.</source>
        <translation>Las hiladas corren a escuadra con el este del plano.</translation>
    </message>
    <message>
        <source>There</source>
        <translation>Está</translation>
    </message>
    <message>
        <source>Third tape, check</source>
        <translation>Tercera cinta, control</translation>
    </message>
    <message>
        <source>Tick it when it is on site. No prices here.</source>
        <translation>Marcar lo que ya está en obra. Aquí no hay precios.</translation>
    </message>
    <message>
        <source>Tie from its end</source>
        <translation>Cinta desde su fin</translation>
    </message>
    <message>
        <source>Tie from its start</source>
        <translation>Cinta desde su inicio</translation>
    </message>
    <message>
        <source>Tie from the two ends of base line %1 (%2), or name other fixed points.</source>
        <translation>Medir desde los dos extremos de la línea base %1 (%2), o nombrar otros puntos fijos.</translation>
    </message>
    <message>
        <source>Tie from two fixed points that stay: corners of the house, stakes. Name them in the sketch.</source>
        <translation>Medir desde dos puntos fijos que queden: esquinas de la casa, estacas. Nombrarlos en el croquis.</translation>
    </message>
    <message>
        <source>Tied from</source>
        <translation>Medido desde</translation>
    </message>
    <message>
        <source>Ties, offsets, stakes with cut and fill, the level book</source>
        <translation>Medidas de amarre, ordenadas, estacas con corte y relleno, libreta de nivel</translation>
    </message>
    <message>
        <source>To scale: sizes, levels, patterns, joints, and what lies under the ground</source>
        <translation>A escala: medidas, niveles, aparejos, juntas y lo que va bajo tierra</translation>
    </message>
    <message>
        <source>Top of base</source>
        <translation>Sobre la base</translation>
    </message>
    <message>
        <source>Top of base: levels at the stakes, over-dig there, fall right, no sand in low spots</source>
        <translation>Sobre la base: niveles en las estacas, sobreexcavación presente, pendiente correcta, sin arena en puntos bajos</translation>
    </message>
    <message>
        <source>Top of bedding</source>
        <translation>Sobre el asiento</translation>
    </message>
    <message>
        <source>Truck</source>
        <translation>Camión</translation>
    </message>
    <message>
        <source>Truck carries</source>
        <translation>El camión carga</translation>
    </message>
    <message>
        <source>Units and bed dry, weather window and temperature by the sheet of the filler, joint width inside its limits</source>
        <translation>Piezas y cama secas, clima y temperatura según la hoja del relleno, ancho de junta dentro de sus límites</translation>
    </message>
    <message>
        <source>Units, lots and what is kept for repairs</source>
        <translation>Piezas, lotes y lo que se guarda para reparar</translation>
    </message>
    <message>
        <source>Until, note</source>
        <translation>Hasta, nota</translation>
    </message>
    <message>
        <source>Utilities: locate ticket called in 2 to 3 business days ahead; by hand within 2 ft of the marks; private lines of the yard (lighting, irrigation, pool) are not marked by it.</source>
        <translation>Servicios: pedir la localización 2 a 3 días hábiles antes; a mano a menos de 2 ft de las marcas; las líneas privadas del patio (luz, riego, piscina) no se marcan.</translation>
    </message>
    <message>
        <source>Walls in this takeoff are checked in a preliminary way only: no number here is a design. Local code says when a licensed engineer is needed, and that engineer decides.</source>
        <translation>Los muros de este cómputo solo se revisan de forma preliminar: ningún número es un diseño. El código local dice cuándo hace falta un ingeniero con licencia, y ese ingeniero decide.</translation>
    </message>
    <message>
        <source>Warranty on the goods</source>
        <translation>Garantía de los materiales</translation>
    </message>
    <message>
        <source>Warranty on the work</source>
        <translation>Garantía de la obra</translation>
    </message>
    <message>
        <source>Water that is pumped (backwash, pool overflow) never goes into the base or behind a wall.</source>
        <translation>El agua bombeada (retrolavado, rebose de la piscina) nunca va a la base ni detrás de un muro.</translation>
    </message>
    <message>
        <source>Ways in</source>
        <translation>Accesos</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>What a truck carries</source>
        <translation>Lo que carga un camión</translation>
    </message>
    <message>
        <source>What came</source>
        <translation>Qué llegó</translation>
    </message>
    <message>
        <source>What came to light: slab underside, voids</source>
        <translation>Lo que salió a la luz: cara inferior de la losa, huecos</translation>
    </message>
    <message>
        <source>What comes</source>
        <translation>Qué llega</translation>
    </message>
    <message>
        <source>What each supplier is asked for, and when it is wanted</source>
        <translation>Qué se pide a cada proveedor y para cuándo</translation>
    </message>
    <message>
        <source>What held it up</source>
        <translation>Qué lo detuvo</translation>
    </message>
    <message>
        <source>What is cut: the settings of the saw, and what comes off rolls and sticks</source>
        <translation>Qué se corta: los ajustes de la sierra y lo que sale de rollos y barras</translation>
    </message>
    <message>
        <source>What is in it</source>
        <translation>Qué lleva</translation>
    </message>
    <message>
        <source>What is looked at before it is covered, by whom</source>
        <translation>Qué se revisa antes de cubrirlo y quién</translation>
    </message>
    <message>
        <source>What is looked at before it is covered.</source>
        <translation>Qué se revisa antes de taparlo.</translation>
    </message>
    <message>
        <source>What the customer is offered</source>
        <translation>Lo que se ofrece al cliente</translation>
    </message>
    <message>
        <source>What to bring, in the order of building</source>
        <translation>Qué traer, en el orden de la obra</translation>
    </message>
    <message>
        <source>What to bring, in the order of building.</source>
        <translation>Qué traer, en el orden de la obra.</translation>
    </message>
    <message>
        <source>What was built, looked at and left behind.</source>
        <translation>Lo construido, revisado y entregado.</translation>
    </message>
    <message>
        <source>What was built, looked at, tested and left behind</source>
        <translation>Lo construido, revisado, probado y entregado</translation>
    </message>
    <message>
        <source>What was looked at</source>
        <translation>Qué se revisó</translation>
    </message>
    <message>
        <source>What was put right</source>
        <translation>Qué se corrigió</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Where goods stand, loads by stage, pallet by pallet</source>
        <translation>Dónde se acopia, cargas por etapa, tarima por tarima</translation>
    </message>
    <message>
        <source>Where it stands, what comes when, who empties which pallet.</source>
        <translation>Dónde se acopia, qué llega y cuándo, qué área vacía cada tarima.</translation>
    </message>
    <message>
        <source>Where the first unit lies and what the tape must read.</source>
        <translation>Dónde va la primera pieza y qué debe leer la cinta.</translation>
    </message>
    <message>
        <source>Where the first unit lies, running measures, levels, the first pallets</source>
        <translation>Dónde va la primera pieza, medidas corridas, niveles, las primeras tarimas</translation>
    </message>
    <message>
        <source>Where they are</source>
        <translation>Dónde están</translation>
    </message>
    <message>
        <source>Whose business</source>
        <translation>A quién le toca</translation>
    </message>
    <message>
        <source>Why, who said so</source>
        <translation>Por qué, quién lo dijo</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Cálculo</translation>
    </message>
    <message>
        <source>Write on it what was measured, counted and changed, and bring it back.</source>
        <translation>Anotar lo medido, contado y cambiado, y devolverla.</translation>
    </message>
    <message>
        <source>Written by</source>
        <translation>Anotado por</translation>
    </message>
    <message>
        <source>a rule of thumb, not measured</source>
        <translation>regla práctica, no medido</translation>
    </message>
    <message>
        <source>anyone goes in</source>
        <translation>que entre alguien</translation>
    </message>
    <message>
        <source>arborist</source>
        <translation>arborista</translation>
    </message>
    <message>
        <source>association article on permeable bases</source>
        <translation>artículo de la asociación sobre bases permeables</translation>
    </message>
    <message>
        <source>association installation page; UFGS 02780</source>
        <translation>página de instalación de la asociación; UFGS 02780</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>bolsa</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>bolsas</translation>
    </message>
    <message>
        <source>behind %1</source>
        <translation>detrás de %1</translation>
    </message>
    <message>
        <source>box</source>
        <translation>caja</translation>
    </message>
    <message>
        <source>boxes</source>
        <translation>cajas</translation>
    </message>
    <message>
        <source>by the sheet of the filler</source>
        <translation>según la hoja del relleno</translation>
    </message>
    <message>
        <source>can</source>
        <translation>lata</translation>
    </message>
    <message>
        <source>cans</source>
        <translation>latas</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>rollo</translation>
    </message>
    <message>
        <source>coils</source>
        <translation>rollos</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>common practice; sheet of the adhesive</source>
        <translation>práctica común; hoja del adhesivo</translation>
    </message>
    <message>
        <source>competent person</source>
        <translation>persona competente</translation>
    </message>
    <message>
        <source>coping is ordered</source>
        <translation>pedir la albardilla</translation>
    </message>
    <message>
        <source>corner %1 of %2</source>
        <translation>esquina %1 de %2</translation>
    </message>
    <message>
        <source>courses</source>
        <translation>hiladas</translation>
    </message>
    <message>
        <source>crew lead</source>
        <translation>encargado</translation>
    </message>
    <message>
        <source>crew lead, pool builder</source>
        <translation>encargado, constructor de la piscina</translation>
    </message>
    <message>
        <source>crew lead; arborist where it can&apos;t be kept</source>
        <translation>encargado; arborista donde no se pueda cumplir</translation>
    </message>
    <message>
        <source>crew lead; engineer</source>
        <translation>encargado; ingeniero</translation>
    </message>
    <message>
        <source>crew lead; engineer on organic, expansive or wet soil</source>
        <translation>encargado; ingeniero en suelo orgánico, expansivo o mojado</translation>
    </message>
    <message>
        <source>crew lead; inspector where a permit says so</source>
        <translation>encargado; inspector donde el permiso lo pida</translation>
    </message>
    <message>
        <source>crew lead; test lab if specified</source>
        <translation>encargado; laboratorio si se especifica</translation>
    </message>
    <message>
        <source>cu yd</source>
        <translation>yd³</translation>
    </message>
    <message>
        <source>depth half the width, 1/4 to 1/2 in</source>
        <translation>profundidad la mitad del ancho, 1/4 a 1/2 in</translation>
    </message>
    <message>
        <source>done by a licensed trade</source>
        <translation>lo hace un oficio con licencia</translation>
    </message>
    <message>
        <source>each outlet runs</source>
        <translation>cada salida corre</translation>
    </message>
    <message>
        <source>engineer or pool builder</source>
        <translation>ingeniero o constructor de la piscina</translation>
    </message>
    <message>
        <source>engineer&apos;s inspector, else crew lead</source>
        <translation>inspector del ingeniero; si no, encargado</translation>
    </message>
    <message>
        <source>estimator</source>
        <translation>presupuestista</translation>
    </message>
    <message>
        <source>estimator with the owner</source>
        <translation>presupuestista con el propietario</translation>
    </message>
    <message>
        <source>fabric and stone</source>
        <translation>geotextil y piedra</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>cabe</translation>
    </message>
    <message>
        <source>flatbed, as is common</source>
        <translation>plataforma, según costumbre</translation>
    </message>
    <message>
        <source>from memory: FHWA GEC 11, TEK 18-11B</source>
        <translation>de memoria: FHWA GEC 11, TEK 18-11B</translation>
    </message>
    <message>
        <source>from memory: association wall guide</source>
        <translation>de memoria: guía de muros de la asociación</translation>
    </message>
    <message>
        <source>gluing</source>
        <translation>pegar</translation>
    </message>
    <message>
        <source>greatest less smallest riser 3/8 in</source>
        <translation>contrahuella mayor menos menor 3/8 in</translation>
    </message>
    <message>
        <source>hand-over</source>
        <translation>la entrega</translation>
    </message>
    <message>
        <source>holder of the easement</source>
        <translation>titular de la servidumbre</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>in several goes</source>
        <translation>en varias veces</translation>
    </message>
    <message>
        <source>inspector</source>
        <translation>inspector</translation>
    </message>
    <message>
        <source>inspector or engineer where the wall needs a permit</source>
        <translation>inspector o ingeniero donde el muro necesita permiso</translation>
    </message>
    <message>
        <source>it is covered</source>
        <translation>taparlo</translation>
    </message>
    <message>
        <source>jobs</source>
        <translation>trabajos</translation>
    </message>
    <message>
        <source>layer</source>
        <translation>capa</translation>
    </message>
    <message>
        <source>layers</source>
        <translation>capas</translation>
    </message>
    <message>
        <source>laying</source>
        <translation>colocar</translation>
    </message>
    <message>
        <source>left of it</source>
        <translation>a su izquierda</translation>
    </message>
    <message>
        <source>level within 1/8 in all round</source>
        <translation>nivel dentro de 1/8 in en todo el contorno</translation>
    </message>
    <message>
        <source>level within 3/4 in, up or down</source>
        <translation>nivel dentro de 3/4 in, arriba o abajo</translation>
    </message>
    <message>
        <source>licensed electrician</source>
        <translation>electricista con licencia</translation>
    </message>
    <message>
        <source>licensed electrician, inspector</source>
        <translation>electricista con licencia, inspector</translation>
    </message>
    <message>
        <source>licensed engineer</source>
        <translation>ingeniero con licencia</translation>
    </message>
    <message>
        <source>licensed engineer; local code</source>
        <translation>ingeniero con licencia; código local</translation>
    </message>
    <message>
        <source>line 1-1/4 in in 10 ft, stone full</source>
        <translation>línea 1-1/4 in en 10 ft, piedra llena</translation>
    </message>
    <message>
        <source>loads</source>
        <translation>viajes</translation>
    </message>
    <message>
        <source>local health office</source>
        <translation>oficina local de salud</translation>
    </message>
    <message>
        <source>local rules</source>
        <translation>normas locales</translation>
    </message>
    <message>
        <source>lowest pad from the finished level at the foot</source>
        <translation>plantilla inferior desde el nivel terminado al pie</translation>
    </message>
    <message>
        <source>mixer</source>
        <translation>mezcladora</translation>
    </message>
    <message>
        <source>no load is lifted off within 10 ft of an overhead line, more over 50 kV</source>
        <translation>no se iza carga a menos de 10 ft de una línea aérea, más sobre 50 kV</translation>
    </message>
    <message>
        <source>no ponding over 1/8 in after 30 min; lips 1/4 in at most, 1/8 in unit to unit on access routes</source>
        <translation>sin charcos de más de 1/8 in tras 30 min; resaltes de 1/4 in como máximo, 1/8 in entre piezas en rutas accesibles</translation>
    </message>
    <message>
        <source>not in the job&apos;s catalogue: ask the office</source>
        <translation>no está en el catálogo del trabajo: preguntar en la oficina</translation>
    </message>
    <message>
        <source>office</source>
        <translation>oficina</translation>
    </message>
    <message>
        <source>office with the owner</source>
        <translation>oficina con el propietario</translation>
    </message>
    <message>
        <source>on it</source>
        <translation>sobre ella</translation>
    </message>
    <message>
        <source>our own</source>
        <translation>nuestra</translation>
    </message>
    <message>
        <source>owner with the crew lead</source>
        <translation>propietario con el encargado</translation>
    </message>
    <message>
        <source>owner with the neighbour</source>
        <translation>propietario con el vecino</translation>
    </message>
    <message>
        <source>pack</source>
        <translation>paquete</translation>
    </message>
    <message>
        <source>packs</source>
        <translation>paquetes</translation>
    </message>
    <message>
        <source>pad level 1/8 in in 4 ft</source>
        <translation>plantilla a nivel, 1/8 in en 4 ft</translation>
    </message>
    <message>
        <source>pail</source>
        <translation>cubeta</translation>
    </message>
    <message>
        <source>pails</source>
        <translation>cubetas</translation>
    </message>
    <message>
        <source>pallet %1</source>
        <translation>tarima %1</translation>
    </message>
    <message>
        <source>pallets</source>
        <translation>tarimas</translation>
    </message>
    <message>
        <source>pallets %1 to %2</source>
        <translation>tarimas %1 a %2</translation>
    </message>
    <message>
        <source>pallets and stone stored as near to the water&apos;s edge as the shell is deep</source>
        <translation>tarimas y piedra tan cerca del borde del agua como es profundo el casco</translation>
    </message>
    <message>
        <source>pallets and stone stored on a septic field or within 10 ft of it</source>
        <translation>tarimas y piedra sobre un campo séptico o a menos de 10 ft de él</translation>
    </message>
    <message>
        <source>pallets and stone stored on the roots: 1.25 ft for each inch of trunk, at least 6 ft, stays free</source>
        <translation>tarimas y piedra sobre las raíces: 1.25 ft por pulgada de tronco, mínimo 6 ft, quedan libres</translation>
    </message>
    <message>
        <source>part pallet</source>
        <translation>tarima incompleta</translation>
    </message>
    <message>
        <source>part pallet: %1</source>
        <translation>tarima incompleta: %1</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>piezas</translation>
    </message>
    <message>
        <source>pool builder</source>
        <translation>constructor de la piscina</translation>
    </message>
    <message>
        <source>pool builder or engineer</source>
        <translation>constructor de la piscina o ingeniero</translation>
    </message>
    <message>
        <source>protection from 5 ft, a way out from 4 ft, spoil 2 ft back</source>
        <translation>protección desde 5 ft, salida desde 4 ft, tierra a 2 ft del borde</translation>
    </message>
    <message>
        <source>repeats</source>
        <translation>repeticiones</translation>
    </message>
    <message>
        <source>right of it</source>
        <translation>a su derecha</translation>
    </message>
    <message>
        <source>roll</source>
        <translation>rollo</translation>
    </message>
    <message>
        <source>rolls</source>
        <translation>rollos</translation>
    </message>
    <message>
        <source>rows of the repeat</source>
        <translation>hiladas de la repetición</translation>
    </message>
    <message>
        <source>sausage</source>
        <translation>salchicha</translation>
    </message>
    <message>
        <source>sausages</source>
        <translation>salchichas</translation>
    </message>
    <message>
        <source>set down here: %1</source>
        <translation>descargar aquí: %1</translation>
    </message>
    <message>
        <source>sheet of the filler</source>
        <translation>hoja del relleno</translation>
    </message>
    <message>
        <source>short ton</source>
        <translation>tonelada corta</translation>
    </message>
    <message>
        <source>short tons</source>
        <translation>toneladas cortas</translation>
    </message>
    <message>
        <source>sq ft</source>
        <translation>pies²</translation>
    </message>
    <message>
        <source>start of %1</source>
        <translation>inicio de %1</translation>
    </message>
    <message>
        <source>start point</source>
        <translation>punto de arranque</translation>
    </message>
    <message>
        <source>stick</source>
        <translation>tramo</translation>
    </message>
    <message>
        <source>sticks</source>
        <translation>tramos</translation>
    </message>
    <message>
        <source>stored in an easement</source>
        <translation>acopio en una servidumbre</translation>
    </message>
    <message>
        <source>stored on the dig or within 2 ft of its edge</source>
        <translation>acopio sobre la excavación o a menos de 2 ft de su borde</translation>
    </message>
    <message>
        <source>stored over the lot line</source>
        <translation>acopio pasado el lindero</translation>
    </message>
    <message>
        <source>subcontracted trades</source>
        <translation>oficios subcontratados</translation>
    </message>
    <message>
        <source>supplied by others</source>
        <translation>lo suministran otros</translation>
    </message>
    <message>
        <source>temperature and drying time by the sheet of the adhesive</source>
        <translation>temperatura y secado según la hoja del adhesivo</translation>
    </message>
    <message>
        <source>the base</source>
        <translation>la base</translation>
    </message>
    <message>
        <source>the deck</source>
        <translation>la terraza</translation>
    </message>
    <message>
        <source>the dig</source>
        <translation>excavar</translation>
    </message>
    <message>
        <source>the filler</source>
        <translation>rellenar las juntas</translation>
    </message>
    <message>
        <source>the first course</source>
        <translation>la primera hilada</translation>
    </message>
    <message>
        <source>the first pass of the plate</source>
        <translation>la primera pasada de la placa</translation>
    </message>
    <message>
        <source>the first tooth goes into the ground</source>
        <translation>que el primer diente entre en la tierra</translation>
    </message>
    <message>
        <source>the joints</source>
        <translation>las juntas</translation>
    </message>
    <message>
        <source>the lowest block</source>
        <translation>poner el bloque inferior</translation>
    </message>
    <message>
        <source>the next block or tread</source>
        <translation>poner el bloque o la huella siguiente</translation>
    </message>
    <message>
        <source>the next courses</source>
        <translation>las hiladas siguientes</translation>
    </message>
    <message>
        <source>the next lift</source>
        <translation>la capa siguiente</translation>
    </message>
    <message>
        <source>the sealant</source>
        <translation>sellar</translation>
    </message>
    <message>
        <source>the start</source>
        <translation>empezar</translation>
    </message>
    <message>
        <source>the stone covers it</source>
        <translation>que lo tape la piedra</translation>
    </message>
    <message>
        <source>thickness of the build-up</source>
        <translation>espesor del paquete</translation>
    </message>
    <message>
        <source>thickness within the limit</source>
        <translation>espesor dentro del límite</translation>
    </message>
    <message>
        <source>thickness within the limit; 98 % standard Proctor where tested</source>
        <translation>espesor dentro del límite; 98 % Proctor estándar donde se ensaya</translation>
    </message>
    <message>
        <source>ticket still valid</source>
        <translation>solicitud aún vigente</translation>
    </message>
    <message>
        <source>to spare</source>
        <translation>de sobra</translation>
    </message>
    <message>
        <source>ton</source>
        <translation>tonelada corta</translation>
    </message>
    <message>
        <source>tons</source>
        <translation>toneladas cortas</translation>
    </message>
    <message>
        <source>tube</source>
        <translation>tubo</translation>
    </message>
    <message>
        <source>tubes</source>
        <translation>tubos</translation>
    </message>
    <message>
        <source>units</source>
        <translation>piezas</translation>
    </message>
    <message>
        <source>water&apos;s edge measured again as built</source>
        <translation>borde del agua medido de nuevo como quedó</translation>
    </message>
    <message>
        <source>with the pallets</source>
        <translation>con las tarimas</translation>
    </message>
    <message>
        <source>within 3/8 in over 10 ft, up or down</source>
        <translation>dentro de 3/8 in en 10 ft, arriba o abajo</translation>
    </message>
    <message>
        <source>%1 L</source>
        <translation>%1 izq.</translation>
    </message>
    <message>
        <source>%1 R</source>
        <translation>%1 der.</translation>
    </message>
    <message>
        <source>%1 along the face</source>
        <translation>%1 a lo largo de la cara</translation>
    </message>
    <message>
        <source>%1 before</source>
        <translation>%1 antes</translation>
    </message>
    <message>
        <source>%1 courses</source>
        <translation>%1 hiladas</translation>
    </message>
    <message>
        <source>%1 from the bottom of the base to the top of the cap.</source>
        <translation>%1 del fondo de la base a la cara superior del remate.</translation>
    </message>
    <message>
        <source>%1 from the bottom of the lowest block to the top of the blocks.</source>
        <translation>%1 de la cara inferior del bloque más bajo a la cara superior de los bloques.</translation>
    </message>
    <message>
        <source>%1, R %2</source>
        <translation>%1, R %2</translation>
    </message>
    <message>
        <source>%1, edge %2, part %5: chord %3, offsets %4</source>
        <translation>%1, lado %2, parte %5: cuerda %3, ordenadas %4</translation>
    </message>
    <message>
        <source>%1, edge %2: chord %3, offsets %4</source>
        <translation>%1, lado %2: cuerda %3, ordenadas %4</translation>
    </message>
    <message>
        <source>%1, turned %2°</source>
        <translation>%1, girado %2°</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 at %3 %</source>
        <translation>%1: %2 al %3 %</translation>
    </message>
    <message>
        <source>%1: %2, at least %3 is asked for.</source>
        <translation>%1: %2; se pide %3 como mínimo.</translation>
    </message>
    <message>
        <source>%1: %2, at most %3 is asked for.</source>
        <translation>%1: %2; se pide %3 como máximo.</translation>
    </message>
    <message>
        <source>* The ground there lies beyond what was measured: its cut and fill is a guess until levels are taken.</source>
        <translation>* El terreno ahí queda fuera de lo medido: su corte y relleno es una suposición hasta tomar niveles.</translation>
    </message>
    <message>
        <source>* The two tapes cross at a poor angle: a small slip moves the place far. Measure the check too, or go by along and out.</source>
        <translation>* Las dos cintas se cruzan en mal ángulo: un pequeño error mueve mucho el punto. Medir también el control, o guiarse por las medidas a lo largo y hacia fuera.</translation>
    </message>
    <message>
        <source>, joint %1</source>
        <translation>, junta %1</translation>
    </message>
    <message>
        <source>- - - reinforcement %1 long, from %2 to %3</source>
        <translation>- - - refuerzo de %1 de largo, de %2 a %3</translation>
    </message>
    <message>
        <source>Above the paving</source>
        <translation>Sobre el pavimento</translation>
    </message>
    <message>
        <source>Along is measured on the base line from its start, or before it; out square to it, left (L) or right (R) as one walks from start to end. Ties are tapes from both ends of the base line; the check is the distance to the mark in the row above, of the first one to the last of its element.</source>
        <translation>A lo largo se mide sobre la línea base desde su inicio, o antes de él; hacia fuera, a escuadra con ella, a la izquierda (izq.) o a la derecha (der.) caminando del inicio al fin. Las cintas van desde los dos extremos de la línea base; el control es la distancia a la marca de la fila de arriba, y el de la primera, a la última de su elemento.</translation>
    </message>
    <message>
        <source>Backsight</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Base line %1</source>
        <translation>Línea base %1</translation>
    </message>
    <message>
        <source>Base past the blocks</source>
        <translation>Base más allá de los bloques</translation>
    </message>
    <message>
        <source>Base past the edge</source>
        <translation>Base más allá del borde</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Asiento</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Bloque</translation>
    </message>
    <message>
        <source>Both alike is square; one longer says which way it leans.</source>
        <translation>Las dos iguales: a escuadra; la más larga dice hacia dónde se inclina.</translation>
    </message>
    <message>
        <source>Cap</source>
        <translation>Remate</translation>
    </message>
    <message>
        <source>Caps: %1, of them cut %2.</source>
        <translation>Remates: %1, de ellos cortados %2.</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Verificación</translation>
    </message>
    <message>
        <source>Checks of its stability: %1, of them failed: %2.</source>
        <translation>Comprobaciones de su estabilidad: %1; no cumplen: %2.</translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation>Holgura</translation>
    </message>
    <message>
        <source>Collar, thickness</source>
        <translation>Collar, espesor</translation>
    </message>
    <message>
        <source>Collar, width</source>
        <translation>Collar, ancho</translation>
    </message>
    <message>
        <source>Corner</source>
        <translation>De esquina</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Hilada</translation>
    </message>
    <message>
        <source>Courses buried</source>
        <translation>Hiladas enterradas</translation>
    </message>
    <message>
        <source>Courses of wall %1</source>
        <translation>Hiladas del muro %1</translation>
    </message>
    <message>
        <source>Curves by offsets</source>
        <translation>Curvas por ordenadas</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Diagonals</source>
        <translation>Diagonales</translation>
    </message>
    <message>
        <source>Drip groove, deep</source>
        <translation>Goterón, profundidad</translation>
    </message>
    <message>
        <source>Earth over the stone</source>
        <translation>Tierra sobre la piedra</translation>
    </message>
    <message>
        <source>End</source>
        <translation>De extremo</translation>
    </message>
    <message>
        <source>Fall</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Acabado</translation>
    </message>
    <message>
        <source>Footing, thickness</source>
        <translation>Zapata, espesor</translation>
    </message>
    <message>
        <source>Footing, width</source>
        <translation>Zapata, ancho</translation>
    </message>
    <message>
        <source>Foresight</source>
        <translation>Adelante</translation>
    </message>
    <message>
        <source>Formation is the bottom of the build-up: dig or fill to there, then build up to the finish.</source>
        <translation>La subrasante es el fondo del paquete de capas: excavar o rellenar hasta ahí y luego subir hasta el acabado.</translation>
    </message>
    <message>
        <source>From the base line, edge by edge. Tick what is set out and checked.</source>
        <translation>Desde la línea base, lado por lado. Marcar lo replanteado y controlado.</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Terreno</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Medias</translation>
    </message>
    <message>
        <source>Haunch</source>
        <translation>Cuña de concreto</translation>
    </message>
    <message>
        <source>Height above ground</source>
        <translation>Altura sobre el terreno</translation>
    </message>
    <message>
        <source>Heights are in feet.</source>
        <translation>Las cotas están en pies.</translation>
    </message>
    <message>
        <source>Heights are in metres.</source>
        <translation>Las cotas están en metros.</translation>
    </message>
    <message>
        <source>How each thing is built up, to scale. Each cut is taken where it says most.</source>
        <translation>Cómo se compone cada cosa, a escala. Cada corte está tomado donde más muestra.</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Invert at its start</source>
        <translation>Fondo del tubo al inicio</translation>
    </message>
    <message>
        <source>Joint between units</source>
        <translation>Junta entre piezas</translation>
    </message>
    <message>
        <source>Joint to the coping</source>
        <translation>Junta con el coronamiento</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Lap</source>
        <translation>Traslape</translation>
    </message>
    <message>
        <source>Layer on course %1</source>
        <translation>Capa sobre la hilada %1</translation>
    </message>
    <message>
        <source>Least cover</source>
        <translation>Recubrimiento mínimo</translation>
    </message>
    <message>
        <source>Level book %1</source>
        <translation>Libreta de nivelación %1</translation>
    </message>
    <message>
        <source>Leveling base</source>
        <translation>Base de nivelación</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Marcas</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>No checks of its stability were made.</source>
        <translation>No se hicieron comprobaciones de su estabilidad.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Nothing here is a design: local code and a licensed engineer decide.</source>
        <translation>Nada de esto es un diseño: deciden la norma local y un ingeniero con licencia.</translation>
    </message>
    <message>
        <source>Nothing is drawn yet that could be set out.</source>
        <translation>Todavía no hay nada dibujado que se pueda replantear.</translation>
    </message>
    <message>
        <source>Nothing is drawn yet.</source>
        <translation>Todavía no hay nada dibujado.</translation>
    </message>
    <message>
        <source>Nothing that is drawn has a section yet: choose build-ups, units and blocks first.</source>
        <translation>Nada de lo dibujado tiene corte todavía: elegir antes los paquetes de capas, las piezas y los bloques.</translation>
    </message>
    <message>
        <source>On curves</source>
        <translation>En curvas</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Hacia fuera</translation>
    </message>
    <message>
        <source>Overhang</source>
        <translation>Vuelo</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Aparejo</translation>
    </message>
    <message>
        <source>Preliminary</source>
        <translation>Preliminar</translation>
    </message>
    <message>
        <source>R %1</source>
        <translation>R %1</translation>
    </message>
    <message>
        <source>Rise in all</source>
        <translation>Desnivel total</translation>
    </message>
    <message>
        <source>Risers</source>
        <translation>Contrahuellas</translation>
    </message>
    <message>
        <source>Section A at %1 along the wall</source>
        <translation>Corte A a %1 del inicio del muro</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Vaso</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Spikes, one each</source>
        <translation>Clavos, uno cada</translation>
    </message>
    <message>
        <source>Stake at</source>
        <translation>Estaca en</translation>
    </message>
    <message>
        <source>Stakes, cut and fill</source>
        <translation>Estacas, corte y relleno</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Escalón</translation>
    </message>
    <message>
        <source>Stone</source>
        <translation>Piedra</translation>
    </message>
    <message>
        <source>Stretch a line along the chord from its first corner as drawn, and measure out square to it.</source>
        <translation>Tender un hilo por la cuerda desde su primera esquina según el dibujo, y medir a escuadra con él.</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Suma</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>The face unrolled, as one sees it who stands before it. Cut units and cut caps are hatched; the heavy line is the ground in front, the thin dashed one the ground behind, the heavy dashes are reinforcement.</source>
        <translation>La cara desarrollada, como se ve de pie frente al muro. Las piezas y los remates cortados van rayados; la línea gruesa es el terreno al frente, la fina a trazos el terreno de atrás, y los trazos gruesos son el refuerzo.</translation>
    </message>
    <message>
        <source>The run closes %1 too high.</source>
        <translation>La nivelación cierra %1 demasiado alto.</translation>
    </message>
    <message>
        <source>The run closes %1 too low.</source>
        <translation>La nivelación cierra %1 demasiado bajo.</translation>
    </message>
    <message>
        <source>The run closes exactly.</source>
        <translation>La nivelación cierra exactamente.</translation>
    </message>
    <message>
        <source>The run was not closed: nothing shows how well it was read.</source>
        <translation>La nivelación no se cerró: nada muestra qué tan bien se leyó.</translation>
    </message>
    <message>
        <source>Tie, end</source>
        <translation>Cinta, fin</translation>
    </message>
    <message>
        <source>Tie, start</source>
        <translation>Cinta, inicio</translation>
    </message>
    <message>
        <source>To be decided for wall %1</source>
        <translation>Por decidir para el muro %1</translation>
    </message>
    <message>
        <source>To finish</source>
        <translation>Al acabado</translation>
    </message>
    <message>
        <source>To formation</source>
        <translation>A subrasante</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Wall %1</source>
        <translation>Muro %1</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Weeps, one each</source>
        <translation>Llorones, uno cada</translation>
    </message>
    <message>
        <source>What the tags say</source>
        <translation>Qué dicen las etiquetas</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Enteras</translation>
    </message>
    <message>
        <source>Width that shows</source>
        <translation>Ancho a la vista</translation>
    </message>
    <message>
        <source>arrow with %</source>
        <translation>flecha con %</translation>
    </message>
    <message>
        <source>at grade</source>
        <translation>a nivel</translation>
    </message>
    <message>
        <source>bearing</source>
        <translation>capacidad de apoyo</translation>
    </message>
    <message>
        <source>both alike: square</source>
        <translation>las dos iguales: a escuadra</translation>
    </message>
    <message>
        <source>building</source>
        <translation>edificio</translation>
    </message>
    <message>
        <source>built later</source>
        <translation>se construye después</translation>
    </message>
    <message>
        <source>centre of edge %1</source>
        <translation>centro del lado %1</translation>
    </message>
    <message>
        <source>channel</source>
        <translation>canaleta</translation>
    </message>
    <message>
        <source>column</source>
        <translation>columna</translation>
    </message>
    <message>
        <source>corner</source>
        <translation>esquina</translation>
    </message>
    <message>
        <source>corner %1</source>
        <translation>esquina %1</translation>
    </message>
    <message>
        <source>corner %1 to corner %2</source>
        <translation>de la esquina %1 a la esquina %2</translation>
    </message>
    <message>
        <source>cross with a number</source>
        <translation>cruz con número</translation>
    </message>
    <message>
        <source>curve, radius %1</source>
        <translation>curva, radio %1</translation>
    </message>
    <message>
        <source>cut %1</source>
        <translation>corte %1</translation>
    </message>
    <message>
        <source>dashed</source>
        <translation>a trazos</translation>
    </message>
    <message>
        <source>dashes and dots</source>
        <translation>trazos y puntos</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>drenaje</translation>
    </message>
    <message>
        <source>drains it</source>
        <translation>lo drena</translation>
    </message>
    <message>
        <source>draw it between two fixed points</source>
        <translation>dibujarla entre dos puntos fijos</translation>
    </message>
    <message>
        <source>draw one between two fixed points that stay where they are</source>
        <translation>dibujar una entre dos puntos fijos que no se muevan</translation>
    </message>
    <message>
        <source>eccentricity, share of the base</source>
        <translation>excentricidad, parte de la base</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>borde</translation>
    </message>
    <message>
        <source>edging</source>
        <translation>borde</translation>
    </message>
    <message>
        <source>end of %1</source>
        <translation>fin de %1</translation>
    </message>
    <message>
        <source>end of the curve</source>
        <translation>fin de la curva</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>equipo</translation>
    </message>
    <message>
        <source>fall, where water runs</source>
        <translation>pendiente, hacia donde corre el agua</translation>
    </message>
    <message>
        <source>feature</source>
        <translation>accesorio</translation>
    </message>
    <message>
        <source>fill %1</source>
        <translation>relleno %1</translation>
    </message>
    <message>
        <source>firm, level</source>
        <translation>firme, nivelado</translation>
    </message>
    <message>
        <source>flush joint</source>
        <translation>junta a ras</translation>
    </message>
    <message>
        <source>grate</source>
        <translation>rejilla</translation>
    </message>
    <message>
        <source>heavy tick</source>
        <translation>trazo grueso</translation>
    </message>
    <message>
        <source>inlet</source>
        <translation>sumidero</translation>
    </message>
    <message>
        <source>internal sliding</source>
        <translation>deslizamiento interno</translation>
    </message>
    <message>
        <source>inv %1</source>
        <translation>fondo %1</translation>
    </message>
    <message>
        <source>keep one of them</source>
        <translation>conservar una de ellas</translation>
    </message>
    <message>
        <source>keep-out</source>
        <translation>zona excluida</translation>
    </message>
    <message>
        <source>kept apart from what stands</source>
        <translation>separada de lo que está en pie</translation>
    </message>
    <message>
        <source>laid</source>
        <translation>colocadas</translation>
    </message>
    <message>
        <source>layer on course %1, connection</source>
        <translation>capa sobre la hilada %1, conexión</translation>
    </message>
    <message>
        <source>layer on course %1, pullout</source>
        <translation>capa sobre la hilada %1, arrancamiento</translation>
    </message>
    <message>
        <source>layer on course %1, tension</source>
        <translation>capa sobre la hilada %1, tensión</translation>
    </message>
    <message>
        <source>left of the chord</source>
        <translation>a la izquierda de la cuerda</translation>
    </message>
    <message>
        <source>level, feet</source>
        <translation>nivel, pies</translation>
    </message>
    <message>
        <source>level, metres</source>
        <translation>nivel, metros</translation>
    </message>
    <message>
        <source>no base line is drawn, so there are no ties and offsets from it</source>
        <translation>no hay línea base dibujada, así que no hay cintas ni medidas desde ella</translation>
    </message>
    <message>
        <source>not square</source>
        <translation>no está a escuadra</translation>
    </message>
    <message>
        <source>on course %1: %2 long</source>
        <translation>sobre la hilada %1: %2 de largo</translation>
    </message>
    <message>
        <source>on the line</source>
        <translation>en la línea</translation>
    </message>
    <message>
        <source>open arrow head</source>
        <translation>punta de flecha abierta</translation>
    </message>
    <message>
        <source>open triangle</source>
        <translation>triángulo abierto</translation>
    </message>
    <message>
        <source>outlet of a pipe</source>
        <translation>salida de un tubo</translation>
    </message>
    <message>
        <source>overturning</source>
        <translation>vuelco</translation>
    </message>
    <message>
        <source>overturning of the blocks over the top layer</source>
        <translation>vuelco de los bloques sobre la capa superior</translation>
    </message>
    <message>
        <source>paved area</source>
        <translation>pavimento</translation>
    </message>
    <message>
        <source>pillar</source>
        <translation>pilar</translation>
    </message>
    <message>
        <source>planter</source>
        <translation>jardinera</translation>
    </message>
    <message>
        <source>protection</source>
        <translation>protección</translation>
    </message>
    <message>
        <source>removal</source>
        <translation>retiro</translation>
    </message>
    <message>
        <source>restraint</source>
        <translation>confinamiento</translation>
    </message>
    <message>
        <source>restraint or edging</source>
        <translation>confinamiento o borde</translation>
    </message>
    <message>
        <source>right of the chord</source>
        <translation>a la derecha de la cuerda</translation>
    </message>
    <message>
        <source>ring with arrow</source>
        <translation>anillo con flecha</translation>
    </message>
    <message>
        <source>riser %1, tread %2</source>
        <translation>contrahuella %1, huella %2</translation>
    </message>
    <message>
        <source>scale 1 : %1</source>
        <translation>escala 1 : %1</translation>
    </message>
    <message>
        <source>sealed joint that moves</source>
        <translation>junta sellada con movimiento</translation>
    </message>
    <message>
        <source>see the list</source>
        <translation>ver la lista</translation>
    </message>
    <message>
        <source>sleeve</source>
        <translation>camisa</translation>
    </message>
    <message>
        <source>sliding</source>
        <translation>deslizamiento</translation>
    </message>
    <message>
        <source>slope marks</source>
        <translation>marcas de talud</translation>
    </message>
    <message>
        <source>start of the pattern and its way</source>
        <translation>inicio del aparejo y su sentido</translation>
    </message>
    <message>
        <source>step in the top of the wall</source>
        <translation>escalón en la coronación del muro</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>etiqueta</translation>
    </message>
    <message>
        <source>this base line starts and ends at one place</source>
        <translation>esta línea base empieza y termina en un mismo lugar</translation>
    </message>
    <message>
        <source>top edge of the dig</source>
        <translation>borde superior de la excavación</translation>
    </message>
    <message>
        <source>tree</source>
        <translation>árbol</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>muro</translation>
    </message>
    <message>
        <source>weep of the kerb</source>
        <translation>llorón del bordillo</translation>
    </message>
    <message>
        <source>%1 %2 of %3</source>
        <translation>%1 %2 de %3</translation>
    </message>
    <message>
        <source>%1 (in place of what is above)</source>
        <translation>%1 (en lugar de lo de arriba)</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 line</source>
        <translation>%1 línea</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 líneas</translation>
    </message>
    <message>
        <source>%1 pallet</source>
        <translation>%1 tarima</translation>
    </message>
    <message>
        <source>%1 pallets</source>
        <translation>%1 tarimas</translation>
    </message>
    <message>
        <source>%1 per %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>%1 piece</source>
        <translation>%1 pieza</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 piezas</translation>
    </message>
    <message>
        <source>%1 spare</source>
        <translation>%1 de repuesto</translation>
    </message>
    <message>
        <source>%1, pattern: %2</source>
        <translation>%1, aparejo: %2</translation>
    </message>
    <message>
        <source>%1, time and material</source>
        <translation>%1, por tiempo y material</translation>
    </message>
    <message>
        <source>%1: %2 of %3 %4 done on %5</source>
        <translation>%1: %2 de %3 %4 hechos el %5</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>1 layer</source>
        <translation>1 capa</translation>
    </message>
    <message>
        <source>1 load</source>
        <translation>1 viaje</translation>
    </message>
    <message>
        <source>1 piece</source>
        <translation>1 pieza</translation>
    </message>
    <message>
        <source>1 ton; ready-mix 1 cu yd</source>
        <translation>1 tonelada corta; concreto premezclado 1 yd³</translation>
    </message>
    <message>
        <source>A line has no price, or something below has to be mended first.</source>
        <translation>Una línea no tiene precio, o primero hay que corregir algo de lo que sigue.</translation>
    </message>
    <message>
        <source>A piece is a sliver under this share of its unit</source>
        <translation>Una pieza es astilla por debajo de esta parte de su unidad</translation>
    </message>
    <message>
        <source>A piece is a sliver under this width</source>
        <translation>Una pieza es astilla por debajo de este ancho</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Aceptado</translation>
    </message>
    <message>
        <source>Access to the site</source>
        <translation>Acceso a la obra</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>De acuerdo</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>An error of ours: not charged</source>
        <translation>Error nuestro: no se cobra</translation>
    </message>
    <message>
        <source>An invented job</source>
        <translation>Una obra inventada</translation>
    </message>
    <message>
        <source>An invented job: its place and its people are made up.</source>
        <translation>Obra inventada: el lugar y las personas no existen.</translation>
    </message>
    <message>
        <source>An invented job: its place, its people and its prices are made up.</source>
        <translation>Obra inventada: el lugar, las personas y los precios no existen.</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Ángulo</translation>
    </message>
    <message>
        <source>As it will be laid</source>
        <translation>Como va a quedar</translation>
    </message>
    <message>
        <source>As signed</source>
        <translation>Como se firmó</translation>
    </message>
    <message>
        <source>Asked by</source>
        <translation>Pedido por</translation>
    </message>
    <message>
        <source>Asked on</source>
        <translation>Pedido el</translation>
    </message>
    <message>
        <source>Assumed, or not in the price</source>
        <translation>Supuesto, o fuera del precio</translation>
    </message>
    <message>
        <source>Assumptions</source>
        <translation>Supuestos</translation>
    </message>
    <message>
        <source>At the saw</source>
        <translation>En la sierra</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Porque</translation>
    </message>
    <message>
        <source>Before this order</source>
        <translation>Antes de esta orden</translation>
    </message>
    <message>
        <source>Blade goes</source>
        <translation>Recorrido del disco</translation>
    </message>
    <message>
        <source>Both sign before the work of this order begins. Where it can&apos;t wait, hours, machines and material go on a ticket that is signed the same day.</source>
        <translation>Ambas partes firman antes de empezar el trabajo de esta orden. Si no puede esperar, las horas, máquinas y materiales van en un vale que se firma el mismo día.</translation>
    </message>
    <message>
        <source>Bought or hired</source>
        <translation>Comprado o rentado</translation>
    </message>
    <message>
        <source>By the rates this is more than %1 h at the saw: outdoors, a hand-held wet saw for more than that in one shift needs a respirator. Local rules and the competent person decide.</source>
        <translation>Según los rendimientos son más de %1 h de sierra: al aire libre, una sierra manual con agua por más de ese tiempo en un turno exige respirador. Deciden las normas locales y la persona competente.</translation>
    </message>
    <message>
        <source>Cancellation</source>
        <translation>Cancelación</translation>
    </message>
    <message>
        <source>Change order</source>
        <translation>Orden de cambio</translation>
    </message>
    <message>
        <source>Change order %1</source>
        <translation>Orden de cambio %1</translation>
    </message>
    <message>
        <source>Changes the price by</source>
        <translation>Cambia el precio en</translation>
    </message>
    <message>
        <source>Checked against</source>
        <translation>Verificado con</translation>
    </message>
    <message>
        <source>Chosen for the whole job</source>
        <translation>Elegido para toda la obra</translation>
    </message>
    <message>
        <source>Comes as</source>
        <translation>Viene en</translation>
    </message>
    <message>
        <source>Comes in</source>
        <translation>Viene en largos de</translation>
    </message>
    <message>
        <source>Confirmed by</source>
        <translation>Confirmado por</translation>
    </message>
    <message>
        <source>Confirmed on</source>
        <translation>Confirmado el</translation>
    </message>
    <message>
        <source>Confirmed: price, day</source>
        <translation>Confirmado: precio, día</translation>
    </message>
    <message>
        <source>Contingency</source>
        <translation>Imprevistos</translation>
    </message>
    <message>
        <source>Contractor</source>
        <translation>Contratista</translation>
    </message>
    <message>
        <source>Counted end to end, without the joints that bends and fittings ask for: measure, then cut.</source>
        <translation>Contado de punta a punta, sin las uniones que piden codos y accesorios: medir y luego cortar.</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Cut each into</source>
        <translation>Cortar cada uno en</translation>
    </message>
    <message>
        <source>Cut to</source>
        <translation>Cortar a</translation>
    </message>
    <message>
        <source>Cutting makes silica dust: cut wet or with dust capture at the blade (29 CFR 1926.1153, Table 1), and pick dust and dried slurry up wet or with a filtered vacuum, never by dry sweeping. No slurry into a storm inlet.</source>
        <translation>Cortar levanta polvo de sílice: cortar con agua o con captación de polvo en el disco (29 CFR 1926.1153, Tabla 1), y recoger polvo y lodo seco con agua o con aspiradora de filtro, nunca barriendo en seco. Nada de lodo en una boca de tormenta.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Days added by this order</source>
        <translation>Días que agrega esta orden</translation>
    </message>
    <message>
        <source>Deliver to: %1</source>
        <translation>Entregar en: %1</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Deliveries against the truck</source>
        <translation>Entregas según el camión</translation>
    </message>
    <message>
        <source>Delivery days</source>
        <translation>Días de entrega</translation>
    </message>
    <message>
        <source>Density of the soil where it lies</source>
        <translation>Densidad del suelo en su sitio</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Drawn there</source>
        <translation>Dibujado ahí</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>Each by itself, with tax; several together may come to a little more or less.</source>
        <translation>Cada una por sí sola, con impuesto; varias juntas pueden dar un poco más o menos.</translation>
    </message>
    <message>
        <source>Each piece runs from the face of the wall into the fill, its strong way with it, beside the next one, without a splice, and is pulled tight before it is covered. How long and on which course is the engineer&apos;s design; where there is none, local code and a licensed engineer decide.</source>
        <translation>Cada pieza va de la cara del muro hacia el relleno, con su sentido fuerte en esa dirección, junto a la siguiente, sin empalmes, y se tensa antes de cubrirla. El largo y la hilada son diseño del ingeniero; si no lo hay, deciden el código local y un ingeniero con licencia.</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Estimate against actual</source>
        <translation>Presupuesto contra real</translation>
    </message>
    <message>
        <source>Fabric under the base</source>
        <translation>Geotextil bajo la base</translation>
    </message>
    <message>
        <source>Fence</source>
        <translation>Tope</translation>
    </message>
    <message>
        <source>Flags: somebody has to decide</source>
        <translation>Avisos: alguien tiene que decidir</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>For: %1</source>
        <translation>Para: %1</translation>
    </message>
    <message>
        <source>From: %1</source>
        <translation>De: %1</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>Hours are multiplied for</source>
        <translation>Las horas se multiplican por</translation>
    </message>
    <message>
        <source>Hours of a day</source>
        <translation>Horas de un día</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>How the rolls are cut</source>
        <translation>Cómo se cortan los rollos</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>In the price</source>
        <translation>En el precio</translation>
    </message>
    <message>
        <source>Included</source>
        <translation>Incluido</translation>
    </message>
    <message>
        <source>Least order: %1.</source>
        <translation>Pedido mínimo: %1.</translation>
    </message>
    <message>
        <source>Length of cut</source>
        <translation>Largo de corte</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Measure each place before cutting: what was built is what counts. Left and right are as seen facing the wall; places along it are from its start.</source>
        <translation>Medir cada lugar antes de cortar: cuenta lo construido. Izquierda y derecha, viendo el muro de frente; los lugares a lo largo, desde su inicio.</translation>
    </message>
    <message>
        <source>Met on site, at the quote&apos;s unit prices</source>
        <translation>Encontrado en obra, a los precios unitarios de la cotización</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>More or less, for each</source>
        <translation>Más o menos, por cada uno</translation>
    </message>
    <message>
        <source>More, less</source>
        <translation>Más, menos</translation>
    </message>
    <message>
        <source>Needs %1 day from order to delivery.</source>
        <translation>Necesita %1 día del pedido a la entrega.</translation>
    </message>
    <message>
        <source>Needs %1 days from order to delivery.</source>
        <translation>Necesita %1 días del pedido a la entrega.</translation>
    </message>
    <message>
        <source>Net</source>
        <translation>Neto</translation>
    </message>
    <message>
        <source>No saw is chosen: passes can&apos;t be told.</source>
        <translation>No hay sierra elegida: no se sabe cuántas pasadas.</translation>
    </message>
    <message>
        <source>No supplier chosen</source>
        <translation>Sin proveedor elegido</translation>
    </message>
    <message>
        <source>Not final</source>
        <translation>No definitivo</translation>
    </message>
    <message>
        <source>Not included</source>
        <translation>No incluido</translation>
    </message>
    <message>
        <source>Nothing comes and nothing goes.</source>
        <translation>Nada entra y nada sale.</translation>
    </message>
    <message>
        <source>Nothing is built yet, so there is nothing to quote.</source>
        <translation>Todavía no se construye nada, así que no hay nada que cotizar.</translation>
    </message>
    <message>
        <source>Nothing is built yet, so there is nothing to work out.</source>
        <translation>Todavía no se construye nada, así que no hay nada que calcular.</translation>
    </message>
    <message>
        <source>Nothing is cut on this job.</source>
        <translation>En esta obra no se corta nada.</translation>
    </message>
    <message>
        <source>Nothing is to be ordered yet.</source>
        <translation>Todavía no hay nada que pedir.</translation>
    </message>
    <message>
        <source>Nothing was estimated and nothing was entered, so there is nothing to compare.</source>
        <translation>No se presupuestó ni se anotó nada, así que no hay nada que comparar.</translation>
    </message>
    <message>
        <source>Notices</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Off the roll</source>
        <translation>Del rollo</translation>
    </message>
    <message>
        <source>On the plan</source>
        <translation>En el plano</translation>
    </message>
    <message>
        <source>On the site</source>
        <translation>En obra</translation>
    </message>
    <message>
        <source>On top</source>
        <translation>Además</translation>
    </message>
    <message>
        <source>On what is added: %1</source>
        <translation>Sobre lo que se agrega: %1</translation>
    </message>
    <message>
        <source>On what is credited: %1</source>
        <translation>Sobre lo que se abona: %1</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Opción</translation>
    </message>
    <message>
        <source>Options: tick what is wanted</source>
        <translation>Opciones: marcar lo que se quiere</translation>
    </message>
    <message>
        <source>Order %1</source>
        <translation>Orden %1</translation>
    </message>
    <message>
        <source>Order number</source>
        <translation>Número de pedido</translation>
    </message>
    <message>
        <source>Over the cost: %1 as a markup, %2 as a margin on the price.</source>
        <translation>Sobre el costo: %1 como recargo, %2 como margen sobre el precio.</translation>
    </message>
    <message>
        <source>Overhead</source>
        <translation>Gastos generales</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>Paving</source>
        <translation>Pavimento</translation>
    </message>
    <message>
        <source>Payment</source>
        <translation>Pago</translation>
    </message>
    <message>
        <source>Payments</source>
        <translation>Pagos</translation>
    </message>
    <message>
        <source>People of the crew</source>
        <translation>Personas de la cuadrilla</translation>
    </message>
    <message>
        <source>Permits, setbacks, barriers and electrical work go by the local code and by those licensed for them; nothing here takes the place of their decision.</source>
        <translation>Permisos, retiros, barreras y trabajo eléctrico van por el código local y por quienes tienen licencia para ello; nada de esto reemplaza su decisión.</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Pipe and what else comes by the length</source>
        <translation>Tubo y lo demás que viene por largo</translation>
    </message>
    <message>
        <source>Place: %1</source>
        <translation>Lugar: %1</translation>
    </message>
    <message>
        <source>Placed and compacted volume of the soil, of its volume where it lies</source>
        <translation>Volumen del suelo colocado y compactado, de su volumen en sitio</translation>
    </message>
    <message>
        <source>Preliminary checks</source>
        <translation>Verificaciones preliminares</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Price before tax</source>
        <translation>Precio antes de impuesto</translation>
    </message>
    <message>
        <source>Price expected</source>
        <translation>Precio esperado</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>Precio de uno</translation>
    </message>
    <message>
        <source>Price so far, not final</source>
        <translation>Precio hasta ahora, no definitivo</translation>
    </message>
    <message>
        <source>Prices expected are those of the office&apos;s price list; the confirmed ones hold.</source>
        <translation>Los precios esperados son los de la lista de la oficina; valen los confirmados.</translation>
    </message>
    <message>
        <source>Problems: no total is final before they are mended</source>
        <translation>Problemas: ningún total es definitivo hasta corregirlos</translation>
    </message>
    <message>
        <source>Profit</source>
        <translation>Utilidad</translation>
    </message>
    <message>
        <source>Quoted on %1. Valid until %2.</source>
        <translation>Cotizado el %1. Válido hasta el %2.</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Lluvia</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Reinforcement</source>
        <translation>Refuerzo</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Rolls</source>
        <translation>Rollos</translation>
    </message>
    <message>
        <source>Rounding</source>
        <translation>Redondeo</translation>
    </message>
    <message>
        <source>Saw kerf</source>
        <translation>Ancho de corte de la sierra</translation>
    </message>
    <message>
        <source>Saw: %1, with water.</source>
        <translation>Sierra: %1, con agua.</translation>
    </message>
    <message>
        <source>Saw: %1.</source>
        <translation>Sierra: %1.</translation>
    </message>
    <message>
        <source>Scale from</source>
        <translation>Escala de</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Share of what is dug that is placed again</source>
        <translation>Parte de lo excavado que se vuelve a colocar</translation>
    </message>
    <message>
        <source>Small goods</source>
        <translation>Cosas menores</translation>
    </message>
    <message>
        <source>Small goods, with the pallets</source>
        <translation>Cosas menores, con las tarimas</translation>
    </message>
    <message>
        <source>Some of these goods have no weight in the catalogue: the weights are of the others. Ask for them before the truck is loaded.</source>
        <translation>Algunos de estos materiales no tienen peso en el catálogo: los pesos son de los demás. Preguntarlos antes de cargar el camión.</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Spare units kept for repairs</source>
        <translation>Unidades de repuesto para reparaciones</translation>
    </message>
    <message>
        <source>Spent</source>
        <translation>Gastado</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Stage by stage, and what it will cost to finish</source>
        <translation>Etapa por etapa, y lo que costará terminar</translation>
    </message>
    <message>
        <source>Starter catalogue: invented, brandless items and prices in US dollars, good for trying the program and for nothing else. Sizes, joints and weights are those usual in the trade; enter your own suppliers and prices before you bid.</source>
        <translation>Catálogo inicial: artículos sin marca y precios en dólares inventados, buenos para probar el programa y para nada más. Medidas, juntas y pesos son los usuales del oficio; anotar los proveedores y precios propios antes de cotizar.</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Stays and is built on: %1</source>
        <translation>Se queda y se construye encima: %1</translation>
    </message>
    <message>
        <source>Step of the price</source>
        <translation>Paso del precio</translation>
    </message>
    <message>
        <source>Strips</source>
        <translation>Tiras</translation>
    </message>
    <message>
        <source>Struck out (%1): %2</source>
        <translation>Tachado (%1): %2</translation>
    </message>
    <message>
        <source>Supplied by others, not ordered here</source>
        <translation>Lo ponen otros, no se pide aquí</translation>
    </message>
    <message>
        <source>Swell of the soil when it is dug</source>
        <translation>Esponjamiento del suelo al excavarlo</translation>
    </message>
    <message>
        <source>Taken for granted</source>
        <translation>Se da por hecho</translation>
    </message>
    <message>
        <source>Taken out: %1</source>
        <translation>Se retira: %1</translation>
    </message>
    <message>
        <source>Tapers of borders and copings are in the minutes of laying them.</source>
        <translation>Los cortes en cuña de cenefas y bordes están en los minutos de colocarlos.</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Impuesto</translation>
    </message>
    <message>
        <source>Terms</source>
        <translation>Condiciones</translation>
    </message>
    <message>
        <source>The contract from now on</source>
        <translation>El contrato de aquí en adelante</translation>
    </message>
    <message>
        <source>The contract with it</source>
        <translation>El contrato con esta orden</translation>
    </message>
    <message>
        <source>The cost to finish is without this stage, which nobody measured: %1.</source>
        <translation>El costo por terminar va sin esta etapa, que nadie midió: %1.</translation>
    </message>
    <message>
        <source>The last one is only</source>
        <translation>La última, solo</translation>
    </message>
    <message>
        <source>The lines above</source>
        <translation>Las líneas de arriba</translation>
    </message>
    <message>
        <source>The price is not final: do not sign this quote yet. What is missing stands in the working.</source>
        <translation>El precio no es definitivo: no firmar todavía esta cotización. Lo que falta está en los cálculos.</translation>
    </message>
    <message>
        <source>The truck carries</source>
        <translation>El camión carga</translation>
    </message>
    <message>
        <source>The workings themselves are in English.</source>
        <translation>Los cálculos mismos van en inglés.</translation>
    </message>
    <message>
        <source>These go by the soils, strengths and factors that were entered, and decide nothing: local code does, and a licensed engineer.</source>
        <translation>Van por los suelos, resistencias y factores que se anotaron, y no deciden nada: deciden el código local y un ingeniero con licencia.</translation>
    </message>
    <message>
        <source>This job, its place, its people and its prices are made up. This is not an offer.</source>
        <translation>Esta obra, su lugar, sus personas y sus precios son inventados. Esto no es una oferta.</translation>
    </message>
    <message>
        <source>This order</source>
        <translation>Esta orden</translation>
    </message>
    <message>
        <source>This order %1</source>
        <translation>Esta orden %1</translation>
    </message>
    <message>
        <source>This order can&apos;t be signed yet: see what is to be mended.</source>
        <translation>Esta orden todavía no se puede firmar: ver lo que hay que corregir.</translation>
    </message>
    <message>
        <source>Through</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>To be mended or decided</source>
        <translation>Por corregir o decidir</translation>
    </message>
    <message>
        <source>To finish, estimate&apos;s rate</source>
        <translation>Por terminar, al rendimiento del presupuesto</translation>
    </message>
    <message>
        <source>To finish, own rate</source>
        <translation>Por terminar, al rendimiento propio</translation>
    </message>
    <message>
        <source>Topsoil stripped first</source>
        <translation>Tierra vegetal que se retira primero</translation>
    </message>
    <message>
        <source>Total with tax</source>
        <translation>Total con impuesto</translation>
    </message>
    <message>
        <source>Total with tax, not final</source>
        <translation>Total con impuesto, no definitivo</translation>
    </message>
    <message>
        <source>Truck for haul</source>
        <translation>Camión de acarreo</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Usado</translation>
    </message>
    <message>
        <source>Valid for %1 days from the day on which it is dated and signed.</source>
        <translation>Válido %1 días desde el día en que se feche y se firme.</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Wanted on</source>
        <translation>Se necesita el</translation>
    </message>
    <message>
        <source>Water that goes into the ground</source>
        <translation>Agua que entra en el suelo</translation>
    </message>
    <message>
        <source>Water, litres</source>
        <translation>Agua, litros</translation>
    </message>
    <message>
        <source>Weight of a load</source>
        <translation>Peso de un viaje</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>What can&apos;t be seen before the dig</source>
        <translation>Lo que no se ve antes de excavar</translation>
    </message>
    <message>
        <source>What comes and what goes</source>
        <translation>Lo que entra y lo que sale</translation>
    </message>
    <message>
        <source>What goes by a unit price of the quote has nothing on top of it.</source>
        <translation>Lo que va por un precio unitario de la cotización no lleva nada encima.</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Where it goes</source>
        <translation>A dónde va</translation>
    </message>
    <message>
        <source>Where the ground is not what was expected (water, soft or filled ground, a pipe or a cable, an old footing) work stops there until a competent person has looked at it; lines under the ground are located again before digging on. Local code decides, and where it asks for one a licensed engineer.</source>
        <translation>Donde el terreno no es el esperado (agua, suelo blando o relleno, un tubo o un cable, un cimiento viejo) el trabajo se detiene hasta que lo vea una persona competente; las líneas enterradas se localizan otra vez antes de seguir excavando. Decide el código local y, donde lo pida, un ingeniero con licencia.</translation>
    </message>
    <message>
        <source>Whole ones</source>
        <translation>Enteros</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Work by the hour</source>
        <translation>Trabajo por hora</translation>
    </message>
    <message>
        <source>Work, by the rates of the estimate</source>
        <translation>Trabajo, según los rendimientos del presupuesto</translation>
    </message>
    <message>
        <source>across</source>
        <translation>a lo ancho</translation>
    </message>
    <message>
        <source>across the flight, the cut end inside</source>
        <translation>a lo ancho de la escalera, el extremo cortado hacia adentro</translation>
    </message>
    <message>
        <source>across, closer</source>
        <translation>a lo ancho, pieza de cierre</translation>
    </message>
    <message>
        <source>across, last of its run</source>
        <translation>a lo ancho, última de su tramo</translation>
    </message>
    <message>
        <source>across, square for a corner</source>
        <translation>a lo ancho, cuadrada para una esquina</translation>
    </message>
    <message>
        <source>all stages</source>
        <translation>todas las etapas</translation>
    </message>
    <message>
        <source>allowance</source>
        <translation>partida estimada</translation>
    </message>
    <message>
        <source>along the wall</source>
        <translation>a lo largo del muro</translation>
    </message>
    <message>
        <source>an error of ours</source>
        <translation>un error nuestro</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>and one cut to</source>
        <translation>y uno cortado a</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>pedido precio</translation>
    </message>
    <message>
        <source>asked for by ________________ (%1 day before)</source>
        <translation>pedir a más tardar el ________________ (%1 día antes)</translation>
    </message>
    <message>
        <source>asked for by ________________ (%1 days before)</source>
        <translation>pedir a más tardar el ________________ (%1 días antes)</translation>
    </message>
    <message>
        <source>asphalt</source>
        <translation>asfalto</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>a lo más %1</translation>
    </message>
    <message>
        <source>border of %1</source>
        <translation>cenefa de %1</translation>
    </message>
    <message>
        <source>by others</source>
        <translation>por otros</translation>
    </message>
    <message>
        <source>cap beside the steps, closer</source>
        <translation>remate junto a los escalones, pieza de cierre</translation>
    </message>
    <message>
        <source>cap, closer</source>
        <translation>remate, pieza de cierre</translation>
    </message>
    <message>
        <source>cap, mitre</source>
        <translation>remate, inglete</translation>
    </message>
    <message>
        <source>cap, taper</source>
        <translation>remate, cuña</translation>
    </message>
    <message>
        <source>cap: %1</source>
        <translation>remate: %1</translation>
    </message>
    <message>
        <source>concrete</source>
        <translation>concreto</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>confirmado</translation>
    </message>
    <message>
        <source>coping</source>
        <translation>borde</translation>
    </message>
    <message>
        <source>corner piece</source>
        <translation>pieza de esquina</translation>
    </message>
    <message>
        <source>course %1</source>
        <translation>hilada %1</translation>
    </message>
    <message>
        <source>courses %1</source>
        <translation>hiladas %1</translation>
    </message>
    <message>
        <source>cut more than once</source>
        <translation>con más de un corte</translation>
    </message>
    <message>
        <source>delivered</source>
        <translation>entregado</translation>
    </message>
    <message>
        <source>does not hold</source>
        <translation>no cumple</translation>
    </message>
    <message>
        <source>end piece</source>
        <translation>pieza de extremo</translation>
    </message>
    <message>
        <source>estimated %1 h for one %2</source>
        <translation>presupuestado %1 h por %2</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>a mano</translation>
    </message>
    <message>
        <source>hidden ground</source>
        <translation>terreno oculto</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>cumple</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en total</translation>
    </message>
    <message>
        <source>left part kept</source>
        <translation>se queda la parte izquierda</translation>
    </message>
    <message>
        <source>lengthwise</source>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>machine</source>
        <translation>con máquina</translation>
    </message>
    <message>
        <source>marked in its place</source>
        <translation>marcado en su lugar</translation>
    </message>
    <message>
        <source>middle part kept</source>
        <translation>se queda la parte central</translation>
    </message>
    <message>
        <source>mitre at a corner</source>
        <translation>inglete en una esquina</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>not final</source>
        <translation>no definitivo</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>not scaled yet</source>
        <translation>todavía sin escala</translation>
    </message>
    <message>
        <source>not through</source>
        <translation>no atraviesa</translation>
    </message>
    <message>
        <source>notched</source>
        <translation>con muesca</translation>
    </message>
    <message>
        <source>on %1 pallet</source>
        <translation>en %1 tarima</translation>
    </message>
    <message>
        <source>on %1 pallets</source>
        <translation>en %1 tarimas</translation>
    </message>
    <message>
        <source>on course %1</source>
        <translation>sobre la hilada %1</translation>
    </message>
    <message>
        <source>on signing</source>
        <translation>al firmar</translation>
    </message>
    <message>
        <source>on: %1</source>
        <translation>sobre: %1</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>out of an offcut</source>
        <translation>de un sobrante</translation>
    </message>
    <message>
        <source>own so far %1 h</source>
        <translation>propio hasta ahora %1 h</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>price of %1</source>
        <translation>precio del %1</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>right part kept</source>
        <translation>se queda la parte derecha</translation>
    </message>
    <message>
        <source>risers</source>
        <translation>peraltes</translation>
    </message>
    <message>
        <source>sod</source>
        <translation>pasto</translation>
    </message>
    <message>
        <source>square</source>
        <translation>a escuadra</translation>
    </message>
    <message>
        <source>stump</source>
        <translation>tocón</translation>
    </message>
    <message>
        <source>taper, both sides</source>
        <translation>cuña, ambos lados</translation>
    </message>
    <message>
        <source>the owner&apos;s wish</source>
        <translation>deseo del dueño</translation>
    </message>
    <message>
        <source>the site</source>
        <translation>la obra</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>con paso angosto</translation>
    </message>
    <message>
        <source>unit paving</source>
        <translation>adoquín</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usado</translation>
    </message>
    <message>
        <source>wall beside the steps</source>
        <translation>muro junto a los escalones</translation>
    </message>
    <message>
        <source>with: %1</source>
        <translation>con: %1</translation>
    </message>
    <message>
        <source>Before any digging the locating service is called and its marks are waited for; local law says how near to a mark is dug by hand.</source>
        <translation>Antes de cavar se llama al servicio de localización y se esperan sus marcas; la ley local dice a qué distancia de una marca se cava a mano.</translation>
    </message>
    <message>
        <source>How wide are the gate and the narrowest place of the way in?</source>
        <translation>¿Qué ancho tienen el portón y el punto más estrecho del acceso?</translation>
    </message>
    <message>
        <source>Gate and way in are taken as wide enough for the machines that the hours are for.</source>
        <translation>Se supone que el portón y el acceso bastan para las máquinas con las que se calcularon las horas.</translation>
    </message>
    <message>
        <source>How steep and how long is the way in, over what, and can it carry a loaded machine?</source>
        <translation>¿Qué pendiente y qué largo tiene el acceso, sobre qué va y soporta una máquina cargada?</translation>
    </message>
    <message>
        <source>The way in is taken as firm and gentle enough for loaded barrows and machines.</source>
        <translation>Se supone que el acceso es firme y suave para carretillas y máquinas cargadas.</translation>
    </message>
    <message>
        <source>Where can pallets, stone and spoil stand, and can the truck reach it?</source>
        <translation>¿Dónde caben palés, piedra y tierra, y llega allí el camión?</translation>
    </message>
    <message>
        <source>A truck is taken to reach a free, firm place for pallets and stone close to the work.</source>
        <translation>Se supone que un camión llega a un lugar libre y firme para palés y piedra cerca de la obra.</translation>
    </message>
    <message>
        <source>Where do trucks and the crew park, and is leave of the road office wanted?</source>
        <translation>¿Dónde estacionan los camiones y la cuadrilla, y hace falta permiso de la vía pública?</translation>
    </message>
    <message>
        <source>Trucks and crew are taken to park at the site without fee or leave.</source>
        <translation>Se supone que los camiones y la cuadrilla estacionan en la obra sin tasa ni permiso.</translation>
    </message>
    <message>
        <source>Who lives beside it: shared drive, fences, hours of noise, dust, what to agree on?</source>
        <translation>¿Quién vive al lado: entrada compartida, vallas, horas de ruido, polvo, qué hay que acordar?</translation>
    </message>
    <message>
        <source>Nothing is taken to be agreed on with neighbours, and working hours to be the usual ones.</source>
        <translation>Se supone que no hay nada que acordar con los vecinos y que el horario es el habitual.</translation>
    </message>
    <message>
        <source>What lines hang over the way in, the drop spot and the work, how high?</source>
        <translation>¿Qué líneas cuelgan sobre el acceso, el lugar de descarga y la obra, y a qué altura?</translation>
    </message>
    <message>
        <source>No overhead line is taken to hang over the way in, the drop spot or the work.</source>
        <translation>Se supone que ninguna línea aérea cuelga sobre el acceso, el lugar de descarga o la obra.</translation>
    </message>
    <message>
        <source>Booms and raised bodies keep the distance that the line&apos;s owner and safety law ask for; a competent person looks before anything is lifted.</source>
        <translation>Plumas y cajas levantadas guardan la distancia que piden el dueño de la línea y la ley de seguridad; una persona competente mira antes de levantar nada.</translation>
    </message>
    <message>
        <source>Where do power and water for the saw come from, and how much do they give?</source>
        <translation>¿De dónde vienen la corriente y el agua para la sierra y cuánto dan?</translation>
    </message>
    <message>
        <source>Power and water for the saw are taken to be free of charge within reach of a hose.</source>
        <translation>Se supone que hay corriente y agua gratis para la sierra al alcance de una manguera.</translation>
    </message>
    <message>
        <source>The saw runs on a supply with ground-fault protection, as local code asks for it.</source>
        <translation>La sierra funciona con protección contra fallas a tierra, como pide la norma local.</translation>
    </message>
    <message>
        <source>What lies buried: gas, power, water, sewer, cable, irrigation? Has the locating service marked it?</source>
        <translation>¿Qué hay enterrado: gas, corriente, agua, alcantarillado, cable, riego? ¿Lo ha marcado el servicio de localización?</translation>
    </message>
    <message>
        <source>No buried service is taken to lie in the dig.</source>
        <translation>Se supone que no hay servicios enterrados en la excavación.</translation>
    </message>
    <message>
        <source>Is there a septic tank or field, and where?</source>
        <translation>¿Hay fosa o campo séptico, y dónde?</translation>
    </message>
    <message>
        <source>No septic tank or field is taken to lie near the work or under the way in.</source>
        <translation>Se supone que no hay fosa ni campo séptico cerca de la obra ni bajo el acceso.</translation>
    </message>
    <message>
        <source>The local health office says how near may be dug, driven and drained.</source>
        <translation>La oficina local de sanidad dice a qué distancia se puede cavar, circular y drenar.</translation>
    </message>
    <message>
        <source>Is there a well, and where?</source>
        <translation>¿Hay un pozo, y dónde?</translation>
    </message>
    <message>
        <source>No well is taken to lie near the work.</source>
        <translation>Se supone que no hay pozo cerca de la obra.</translation>
    </message>
    <message>
        <source>The local health office says how near may be dug and drained.</source>
        <translation>La oficina local de sanidad dice a qué distancia se puede cavar y drenar.</translation>
    </message>
    <message>
        <source>Where is the lot line: pins found, or a survey?</source>
        <translation>¿Dónde está el lindero: hitos hallados o un levantamiento?</translation>
    </message>
    <message>
        <source>All work is taken to lie inside the lot; the owner shows the line.</source>
        <translation>Se supone que toda la obra está dentro del lote; el propietario muestra el lindero.</translation>
    </message>
    <message>
        <source>What setbacks and what limit of sealed area does the town ask for?</source>
        <translation>¿Qué retiros y qué límite de superficie sellada pide el municipio?</translation>
    </message>
    <message>
        <source>No setback and no limit of sealed area is taken to bear on the work; the building office decides.</source>
        <translation>Se supone que ningún retiro ni límite de superficie sellada afecta la obra; decide la oficina de construcción.</translation>
    </message>
    <message>
        <source>Are there easements or flood areas on the lot?</source>
        <translation>¿Hay servidumbres o zonas inundables en el lote?</translation>
    </message>
    <message>
        <source>No easement and no flood area is taken to touch the work.</source>
        <translation>Se supone que ninguna servidumbre ni zona inundable toca la obra.</translation>
    </message>
    <message>
        <source>Which trees stay, how thick are they, and how near is the dig?</source>
        <translation>¿Qué árboles se quedan, qué grosor tienen y a qué distancia está la excavación?</translation>
    </message>
    <message>
        <source>No tree that stays is taken to have its roots in the dig or under the way in.</source>
        <translation>Se supone que ningún árbol que se queda tiene raíces en la excavación ni bajo el acceso.</translation>
    </message>
    <message>
        <source>Where do the downspouts come down, and where does the water go?</source>
        <translation>¿Dónde bajan las bajantes y adónde va el agua?</translation>
    </message>
    <message>
        <source>No downspout is taken to let its water onto the work.</source>
        <translation>Se supone que ninguna bajante vierte su agua en la obra.</translation>
    </message>
    <message>
        <source>How high are sills, weeps, vents and siding over the ground, all along?</source>
        <translation>¿A qué altura sobre el suelo están umbrales, drenes, rejillas y revestimiento, en todo el largo?</translation>
    </message>
    <message>
        <source>Sills, weeps, vents and siding are taken to stay above the paving by what local code asks for.</source>
        <translation>Se supone que umbrales, drenes, rejillas y revestimiento quedan sobre el pavimento lo que pide la norma local.</translation>
    </message>
    <message>
        <source>What does the probe find, spade by spade: topsoil, fill, clay, sand, rock?</source>
        <translation>¿Qué halla la cala, palada a palada: tierra vegetal, relleno, arcilla, arena, roca?</translation>
    </message>
    <message>
        <source>The soil is taken as common earth that carries the base as drawn.</source>
        <translation>Se supone tierra común que soporta la base como está dibujada.</translation>
    </message>
    <message>
        <source>A competent person judges the ground and the cut faces before anyone goes in.</source>
        <translation>Una persona competente juzga el terreno y los taludes antes de que entre nadie.</translation>
    </message>
    <message>
        <source>Is it wet: standing water, moss, damp cellar, springs, a high water table?</source>
        <translation>¿Está mojado: agua estancada, musgo, sótano húmedo, manantiales, nivel freático alto?</translation>
    </message>
    <message>
        <source>The dig is taken to stay dry: no pumping is counted.</source>
        <translation>Se supone que la excavación queda seca: no se cuenta bombeo.</translation>
    </message>
    <message>
        <source>Wet ground stands less steep: a competent person looks at a wet dig before anyone goes in.</source>
        <translation>El suelo mojado aguanta menos pendiente: una persona competente mira una excavación mojada antes de que entre nadie.</translation>
    </message>
    <message>
        <source>What is the pool: concrete, liner or one-piece shell, how deep, who builds it and when?</source>
        <translation>¿Cómo es la piscina: hormigón, lámina o vaso de una pieza, qué hondura tiene, quién la hace y cuándo?</translation>
    </message>
    <message>
        <source>The pool is taken to be as drawn and ready for the deck when the crew comes.</source>
        <translation>Se supone que la piscina es como está dibujada y lista para la terraza cuando llegue la cuadrilla.</translation>
    </message>
    <message>
        <source>The pool&apos;s builder says what load may stand beside the shell.</source>
        <translation>El constructor de la piscina dice qué carga puede haber junto al vaso.</translation>
    </message>
    <message>
        <source>How wide and how level is the beam or the edge that carries the coping, and is it sound?</source>
        <translation>¿Qué ancho y qué nivel tiene la viga o el borde que lleva el remate, y está sano?</translation>
    </message>
    <message>
        <source>The pool&apos;s edge is taken as level, sound and wide enough for the coping.</source>
        <translation>Se supone que el borde de la piscina está nivelado, sano y es ancho para el remate.</translation>
    </message>
    <message>
        <source>Where are skimmers, lids, jets, lights and pipes in the edge and under the deck?</source>
        <translation>¿Dónde hay desnatadores, tapas, boquillas, luces y tuberías en el borde y bajo la terraza?</translation>
    </message>
    <message>
        <source>No skimmer, lid or pipe is taken to need more than a cut in the units.</source>
        <translation>Se supone que ningún desnatador, tapa o tubería pide más que un corte en las piezas.</translation>
    </message>
    <message>
        <source>What is electrical at a pool is left to a licensed electrician and the local code.</source>
        <translation>Lo eléctrico de una piscina queda para un electricista con licencia y la norma local.</translation>
    </message>
    <message>
        <source>What barrier is there or is planned, with what gates, and who builds it?</source>
        <translation>¿Qué barrera hay o se prevé, con qué puertas, y quién la hace?</translation>
    </message>
    <message>
        <source>The barrier round the pool is taken to be somebody else&apos;s work.</source>
        <translation>Se supone que la barrera de la piscina es obra de otros.</translation>
    </message>
    <message>
        <source>Local code says what barrier the pool must have, also while the work goes on.</source>
        <translation>La norma local dice qué barrera debe tener la piscina, también durante la obra.</translation>
    </message>
    <message>
        <source>What stands, drives or runs behind the wall: slope, drive, shed, fence, water?</source>
        <translation>¿Qué hay, circula o corre tras el muro: talud, entrada, cobertizo, valla, agua?</translation>
    </message>
    <message>
        <source>Behind the wall nothing is taken to stand, drive or run but what is drawn.</source>
        <translation>Se supone que tras el muro no hay, circula ni corre más que lo dibujado.</translation>
    </message>
    <message>
        <source>Loads on a wall are for local code and a licensed engineer to judge.</source>
        <translation>Las cargas sobre un muro las juzgan la norma local y un ingeniero con licencia.</translation>
    </message>
    <message>
        <source>Where can pipes come out into the open, and whose ground is it?</source>
        <translation>¿Dónde pueden salir las tuberías al aire libre, y de quién es el terreno?</translation>
    </message>
    <message>
        <source>A free outlet on the owner&apos;s ground is taken to lie where it is drawn.</source>
        <translation>Se supone una salida libre en terreno del propietario donde está dibujada.</translation>
    </message>
    <message>
        <source>What is at the head and the foot of the steps: door, landing, drive, public way?</source>
        <translation>¿Qué hay arriba y abajo de los escalones: puerta, descanso, entrada, vía pública?</translation>
    </message>
    <message>
        <source>The heights at the head and the foot of the steps are taken to be as drawn.</source>
        <translation>Se supone que las alturas arriba y abajo de los escalones son las dibujadas.</translation>
    </message>
    <message>
        <source>Local code decides on steps, landings, handrails and guards.</source>
        <translation>La norma local decide sobre escalones, descansos, pasamanos y barandas.</translation>
    </message>
    <message>
        <source>How thick is what goes or stays, is there steel in it, what lies under it?</source>
        <translation>¿Qué grosor tiene lo que se quita o se queda, lleva acero, qué hay debajo?</translation>
    </message>
    <message>
        <source>What is taken out or built on is taken to be as thick and as sound as drawn.</source>
        <translation>Se supone que lo que se quita o sirve de base es tan grueso y sano como está dibujado.</translation>
    </message>
    <message>
        <source>29 CFR 1926.651(b); Call Before You Dig (city page)</source>
        <translation>29 CFR 1926.651(b); página municipal sobre avisar antes de excavar</translation>
    </message>
    <message>
        <source>29 CFR 1926.651(k)(1), .652</source>
        <translation>29 CFR 1926.651(k)(1), .652</translation>
    </message>
    <message>
        <source>Architectural Detailing, sealant joints; ASTM D5249</source>
        <translation>Architectural Detailing, juntas selladas; ASTM D5249</translation>
    </message>
    <message>
        <source>Asked for</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Clear width</source>
        <translation>Ancho libre</translation>
    </message>
    <message>
        <source>Construction Tolerances and Recommendations for Interlocking Concrete Pavements</source>
        <translation>Construction Tolerances and Recommendations for Interlocking Concrete Pavements</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Goods on pallets</source>
        <translation>Material en tarimas</translation>
    </message>
    <message>
        <source>IRC R109.1.1; IBC 1705.6</source>
        <translation>IRC R109.1.1; IBC 1705.6</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Tape</source>
        <translation>Cinta</translation>
    </message>
    <message>
        <source>This stage</source>
        <translation>Esta etapa</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Whole job</source>
        <translation>Todo el trabajo</translation>
    </message>
    <message>
        <source>before %1</source>
        <translation>antes de %1</translation>
    </message>
    <message>
        <source>common practice; from memory: ADA 303; Construction Tolerances and Recommendations for Interlocking Concrete Pavements</source>
        <translation>práctica común; de memoria: ADA 303; Construction Tolerances and Recommendations for Interlocking Concrete Pavements</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>día %1</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>days %1 to %2</source>
        <translation>días %1 a %2</translation>
    </message>
    <message>
        <source>%1: %2 deep</source>
        <translation>%1: a %2 de profundidad</translation>
    </message>
    <message>
        <source>site mark</source>
        <translation>marca del terreno</translation>
    </message>
    <message>
        <source>the ground behind the wall rises at %1.%2 degrees: a bank loads it</source>
        <translation>el terreno detrás del muro sube a %1.%2 grados: un talud lo carga</translation>
    </message>
    <message>
        <source>Flatbed, as is common</source>
        <translation>Plataforma, como es usual</translation>
    </message>
    <message>
        <source>along a curve</source>
        <translation>siguiendo una curva</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>ene</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>feb</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>abr</translation>
    </message>
    <message>
        <source>May</source>
        <translation>may</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>jun</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>jul</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>ago</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>sep</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>oct</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>nov</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>dic</translation>
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
    <name>print</name>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>looked at by</source>
        <translation>revisado por</translation>
    </message>
    <message>
        <source>on</source>
        <translation>el</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Versión</translation>
    </message>
    <message>
        <source>working copy</source>
        <translation>copia de trabajo</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>ft and in</source>
        <translation>pies y pulgadas</translation>
    </message>
    <message>
        <source>m and mm</source>
        <translation>m y mm</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Página</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>invented demo job</source>
        <translation>trabajo de muestra inventado</translation>
    </message>
</context>
<context>
    <name>ui::ActWords</name>
    <message>
        <source>Planned</source>
        <translation>Previsto</translation>
    </message>
    <message>
        <source>Asked for</source>
        <translation>Consultado</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation>Confirmado</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Usado</translation>
    </message>
    <message>
        <source>Returned</source>
        <translation>Devuelto</translation>
    </message>
    <message>
        <source>Hours worked</source>
        <translation>Horas trabajadas</translation>
    </message>
    <message>
        <source>Done to date</source>
        <translation>Hecho hasta hoy</translation>
    </message>
</context>
<context>
    <name>ui::ActualTables</name>
    <message>
        <source>%1 h/%2</source>
        <translation>%1 h/%2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Lines by stage</source>
        <translation>Líneas por etapa</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Usado</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Queda</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>Hours by stage</source>
        <translation>Horas por etapa</translation>
    </message>
    <message>
        <source>Stage and work</source>
        <translation>Etapa y trabajo</translation>
    </message>
    <message>
        <source>Worked</source>
        <translation>Trabajado</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Estimate&apos;s rate</source>
        <translation>Rendimiento previsto</translation>
    </message>
    <message>
        <source>Cost to finish by stage</source>
        <translation>Coste para acabar, por etapa</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Spent</source>
        <translation>Gastado</translation>
    </message>
    <message>
        <source>To finish, estimate&apos;s rate</source>
        <translation>Por terminar, al rendimiento del presupuesto</translation>
    </message>
    <message>
        <source>To finish, own rate</source>
        <translation>Por terminar, al rendimiento propio</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>needed %1</source>
        <translation>se necesitan %1</translation>
    </message>
    <message>
        <source>to order %1</source>
        <translation>por pedir %1</translation>
    </message>
    <message>
        <source>ordered %1</source>
        <translation>pedido %1</translation>
    </message>
    <message>
        <source>confirmed %1</source>
        <translation>confirmado %1</translation>
    </message>
    <message>
        <source>on its way %1</source>
        <translation>en camino %1</translation>
    </message>
    <message>
        <source>returned %1</source>
        <translation>devuelto %1</translation>
    </message>
    <message>
        <source>estimate %1</source>
        <translation>presupuesto %1</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>spent %1</source>
        <translation>gastado %1</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>queda %1</translation>
    </message>
    <message>
        <source>Own rate</source>
        <translation>Rend. propio</translation>
    </message>
</context>
<context>
    <name>ui::ActualWindow</name>
    <message>
        <source>Version %1 needs otherwise than was ordered. The order stands: what differs is added or returned.</source>
        <translation>La versión %1 necesita otra cosa que lo pedido. El pedido queda: lo que difiere se añade o se devuelve.</translation>
    </message>
    <message>
        <source>Order %1 more: %2</source>
        <translation>Pedir %1 más: %2</translation>
    </message>
    <message>
        <source>Return %1: %2</source>
        <translation>Devolver %1: %2</translation>
    </message>
    <message>
        <source>Add and return</source>
        <translation>Añadir y devolver</translation>
    </message>
    <message>
        <source>Enter these</source>
        <translation>Apuntarlos</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Not all could be entered; what is missing is still offered.</source>
        <translation>No se pudo apuntar todo; lo que falta se sigue ofreciendo.</translation>
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
        <source>What was really used</source>
        <translation>Lo que se usó de verdad</translation>
    </message>
    <message>
        <source>Estimate, spent and cost to finish</source>
        <translation>Presupuesto, gastado y coste para acabar</translation>
    </message>
    <message>
        <source>To be mended</source>
        <translation>Por corregir</translation>
    </message>
    <message>
        <source>Deliveries and use</source>
        <translation>Entregas y uso</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>Cost to finish</source>
        <translation>Coste para acabar</translation>
    </message>
    <message>
        <source>What closed jobs say</source>
        <translation>Lo que dicen las obras cerradas</translation>
    </message>
    <message>
        <source>Add and return ...</source>
        <translation>Añadir y devolver ...</translation>
    </message>
    <message>
        <source>Cost to finish is what is not done by measure, at the estimate&apos;s rate and at the own rate so far. What lies on the site is paid and taken off.</source>
        <translation>El coste para acabar es lo que falta por medición, con el rendimiento previsto y con el propio hasta ahora. Lo que está en la obra está pagado y se descuenta.</translation>
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
        <source>Save all entries as CSV</source>
        <translation>Guardar todos los apuntes como CSV</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Estimate %1, spent %2 (%3). To finish %4 at the estimate&apos;s rate, %5 at the own rate.</source>
        <translation>Presupuesto %1, gastado %2 (%3). Para acabar %4 con el rendimiento previsto, %5 con el propio.</translation>
    </message>
    <message>
        <source>Without %1: not measured.</source>
        <translation>Sin %1: no está medido.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>really-used</source>
        <translation>uso-real</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
</context>
<context>
    <name>ui::BackupsWindow</name>
    <message>
        <source>the day&apos;s</source>
        <translation>la del día</translation>
    </message>
    <message>
        <source>before the book got a new form</source>
        <translation>antes de que el libro cambiara de forma</translation>
    </message>
    <message>
        <source>before a backup was put back</source>
        <translation>antes de restaurar una copia</translation>
    </message>
    <message>
        <source>Backups of the book</source>
        <translation>Copias de seguridad del libro</translation>
    </message>
    <message>
        <source>A backup is made on each day that the program is started, and kept for 14 days. They lie in the folder %1.</source>
        <translation>Cada día en que se inicia el programa se hace una copia, que se guarda 14 días. Están en la carpeta %1.</translation>
    </message>
    <message>
        <source>Put it back ...</source>
        <translation>Restaurarla...</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>There is no backup yet</source>
        <translation>Aún no hay copias</translation>
    </message>
    <message>
        <source>The book is only read here, so no backup can be put back</source>
        <translation>Aquí el libro solo se lee, así que no se puede restaurar ninguna copia</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hecha</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Obras</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Copias</translation>
    </message>
    <message>
        <source>can&apos;t be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>Put a backup back</source>
        <translation>Restaurar una copia</translation>
    </message>
    <message>
        <source>Put the job book back to how it stood on %1?</source>
        <translation>¿Devolver el libro de trabajos a como estaba el %1?</translation>
    </message>
    <message>
        <source>All jobs, versions and prices become those of the backup. The book as it is now becomes a backup first, so that it can be put back too. The program closes and starts again.</source>
        <translation>Todos los trabajos, versiones y precios pasan a ser los de la copia. El libro como está ahora se copia antes, de modo que también se puede restaurar. El programa se cierra y se inicia de nuevo.</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Restaurarla</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
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
    <message>
        <source>What is said</source>
        <translation>Lo que se dice</translation>
    </message>
    <message>
        <source>At today&apos;s prices</source>
        <translation>A precios de hoy</translation>
    </message>
    <message>
        <source>Built otherwise ...</source>
        <translation>Hecho de otro modo...</translation>
    </message>
</context>
<context>
    <name>ui::CatalogueWindow</name>
    <message>
        <source>1 entry</source>
        <translation>1 entrada</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 entradas</translation>
    </message>
    <message>
        <source>Offer again</source>
        <translation>Volver a ofrecer</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Nothing is chosen</source>
        <translation>No hay nada elegido</translation>
    </message>
    <message>
        <source>Retired: old jobs keep it, new work is not offered it</source>
        <translation>Retirada: los trabajos viejos la conservan, a los nuevos no se les ofrece</translation>
    </message>
    <message>
        <source>Not kept yet. Mend what is marked, or put it back. %1</source>
        <translation>Aún sin guardar. Corrija lo marcado o devuélvalo. %1</translation>
    </message>
    <message>
        <source>%1 is offered again.</source>
        <translation>%1 se ofrece de nuevo.</translation>
    </message>
    <message>
        <source>%1 is retired. Old jobs keep it; Undo offers it again.</source>
        <translation>%1 está retirada. Los trabajos viejos la conservan; Deshacer vuelve a ofrecerla.</translation>
    </message>
    <message>
        <source>Nothing is left to be taken back.</source>
        <translation>No queda nada por deshacer.</translation>
    </message>
    <message>
        <source>Nothing is left to be done again.</source>
        <translation>No queda nada por rehacer.</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Deshecho</translation>
    </message>
    <message>
        <source>Done again</source>
        <translation>Rehecho</translation>
    </message>
    <message>
        <source>Price list from a file</source>
        <translation>Lista de precios de un archivo</translation>
    </message>
    <message>
        <source>Comma separated values (*.csv)</source>
        <translation>Valores separados por comas (*.csv)</translation>
    </message>
    <message>
        <source>1 price was taken from %1.</source>
        <translation>Se tomó 1 precio de %1.</translation>
    </message>
    <message>
        <source>%1 prices were taken from %2.</source>
        <translation>Se tomaron %1 precios de %2.</translation>
    </message>
    <message>
        <source>%1 is not kept yet. Mend what is marked or put it back; close again to leave it.</source>
        <translation>%1 aún no está guardada. Corrija lo marcado o devuélvalo; cierre otra vez para dejarla.</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation>Catálogo</translation>
    </message>
    <message>
        <source>What was done, or went wrong</source>
        <translation>Lo hecho, o lo que falló</translation>
    </message>
    <message>
        <source>Search the catalogue</source>
        <translation>Buscar en el catálogo</translation>
    </message>
    <message>
        <source>Name, size, number or supplier, in all groups</source>
        <translation>Nombre, tamaño, número o proveedor, en todos los grupos</translation>
    </message>
    <message>
        <source>Retired ones too</source>
        <translation>También las retiradas</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Grupos</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Entradas</translation>
    </message>
    <message>
        <source>Add ...</source>
        <translation>Añadir ...</translation>
    </message>
    <message>
        <source>Copy ...</source>
        <translation>Copiar ...</translation>
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
        <source>Price list from a file ...</source>
        <translation>Lista de precios de un archivo ...</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Devolver</translation>
    </message>
    <message>
        <source>The entry</source>
        <translation>La entrada</translation>
    </message>
</context>
<context>
    <name>ui::ChangeOrderWindow</name>
    <message>
        <source>Change order</source>
        <translation>Orden de cambio</translation>
    </message>
    <message>
        <source>What is entered</source>
        <translation>Lo que se introduce</translation>
    </message>
    <message>
        <source>From %1 to %2</source>
        <translation>De %1 a %2</translation>
    </message>
    <message>
        <source>Save as text ...</source>
        <translation>Guardar como texto...</translation>
    </message>
    <message>
        <source>Drop the order ...</source>
        <translation>Descartar la orden...</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Drop the change order</source>
        <translation>Descartar la orden de cambio</translation>
    </message>
    <message>
        <source>Drop change order %1? What was entered for it is gone then.</source>
        <translation>¿Descartar la orden de cambio %1? Lo introducido para ella se pierde.</translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>Descartarla</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>The order is dropped</source>
        <translation>La orden está descartada</translation>
    </message>
    <message>
        <source>Save as text</source>
        <translation>Guardar como texto</translation>
    </message>
    <message>
        <source>change-order-%1.txt</source>
        <translation>orden-de-cambio-%1.txt</translation>
    </message>
    <message>
        <source>The change order is in %1</source>
        <translation>La orden de cambio está en %1</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>versión %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Save as PDF ...</source>
        <translation>Guardar como PDF ...</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>change-order-%1.pdf</source>
        <translation>orden-de-cambio-%1.pdf</translation>
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
    <message>
        <source>Change order ...</source>
        <translation>Orden de cambio...</translation>
    </message>
    <message>
        <source>A change order is made of two saved versions</source>
        <translation>Una orden de cambio se hace de dos versiones guardadas</translation>
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
    <message>
        <source>price and other details</source>
        <translation>precio y otros detalles</translation>
    </message>
    <message>
        <source>Prices of the book</source>
        <translation>Precios del libro</translation>
    </message>
    <message>
        <source>These parts of the open job are not as your catalogue has them. What you take from it is one step, which Undo takes back.</source>
        <translation>Estas partes del trabajo abierto no están como en su catálogo. Lo que tome de él es un solo paso, que Deshacer retira.</translation>
    </message>
    <message>
        <source>Change the job</source>
        <translation>Cambiar el trabajo</translation>
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
    <name>ui::EntryForm</name>
    <message>
        <source>%1 worked</source>
        <translation>%1 trabajadas</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <translation>%1 de %2 hecho</translation>
    </message>
    <message>
        <source>What is entered</source>
        <translation>Lo que se introduce</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Of in all</source>
        <translation>De un total de</translation>
    </message>
    <message>
        <source>Measured in</source>
        <translation>Medido en</translation>
    </message>
    <message>
        <source>Price of one</source>
        <translation>Precio de uno</translation>
    </message>
    <message>
        <source>as estimated</source>
        <translation>el previsto</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Ticket</source>
        <translation>Albarán</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Enter it</source>
        <translation>Apuntarlo</translation>
    </message>
    <message>
        <source>Correct it</source>
        <translation>Corregirlo</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Anularlo</translation>
    </message>
    <message>
        <source>What was entered</source>
        <translation>Lo apuntado</translation>
    </message>
    <message>
        <source>Choose a line to enter something of it</source>
        <translation>Elija una línea para apuntar algo</translation>
    </message>
    <message>
        <source>Enter the correction</source>
        <translation>Apuntar la corrección</translation>
    </message>
</context>
<context>
    <name>ui::EntryModel</name>
    <message>
        <source>not kept yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>retired</source>
        <translation>retirada</translation>
    </message>
    <message>
        <source>offered</source>
        <translation>se ofrece</translation>
    </message>
    <message>
        <source>Size or unit</source>
        <translation>Tamaño o unidad</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Units that fit</source>
        <translation>Piezas que encajan</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejo</translation>
    </message>
    <message>
        <source>Lies under</source>
        <translation>Va bajo</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>What it allows</source>
        <translation>Lo que permite</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Hours for one</source>
        <translation>Horas por unidad</translation>
    </message>
    <message>
        <source>Sells</source>
        <translation>Vende</translation>
    </message>
    <message>
        <source>Least order</source>
        <translation>Pedido mínimo</translation>
    </message>
    <message>
        <source>What meets</source>
        <translation>Lo que se encuentra</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Beside what</source>
        <translation>Junto a qué</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Lo que dice</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Size or use</source>
        <translation>Tamaño o uso</translation>
    </message>
    <message>
        <source>A delivery</source>
        <translation>Una entrega</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Supplier or source</source>
        <translation>Proveedor o fuente</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
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
    <message>
        <source>Options</source>
        <translation>Opciones</translation>
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
    <message>
        <source>The job stays as it is priced</source>
        <translation>El trabajo se queda con sus precios</translation>
    </message>
    <message>
        <source>Prices of the book</source>
        <translation>Precios del libro</translation>
    </message>
    <message>
        <source>The numbers are still being worked out.</source>
        <translation>Los números aún se están calculando.</translation>
    </message>
    <message>
        <source>The plan as a picture</source>
        <translation>El plano como imagen</translation>
    </message>
    <message>
        <source>plan.png</source>
        <translation>plano.png</translation>
    </message>
    <message>
        <source>Pictures (*.png *.svg)</source>
        <translation>Imágenes (*.png *.svg)</translation>
    </message>
    <message>
        <source>The plan is in %1</source>
        <translation>El plano está en %1</translation>
    </message>
</context>
<context>
    <name>ui::NewEntryDialog</name>
    <message>
        <source>Copy it</source>
        <translation>Copiarla</translation>
    </message>
    <message>
        <source>Add to %1</source>
        <translation>Añadir a %1</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Lo que dice</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Clave</translation>
    </message>
    <message>
        <source>Small letters, digits and dashes. Jobs name it by this for ever.</source>
        <translation>Minúsculas, cifras y guiones. Los trabajos la nombran así para siempre.</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation>Copia de %1</translation>
    </message>
    <message>
        <source>It has no name yet: enter what people call it.</source>
        <translation>Aún no tiene nombre: escriba cómo se llama.</translation>
    </message>
    <message>
        <source>The catalogue has one of this id already: choose another.</source>
        <translation>El catálogo ya tiene una con esta clave: elija otra.</translation>
    </message>
    <message>
        <source>The catalogue says this already: say it otherwise.</source>
        <translation>El catálogo ya dice esto: dígalo de otra manera.</translation>
    </message>
</context>
<context>
    <name>ui::OffersPage</name>
    <message>
        <source>%1 h/%2</source>
        <translation>%1 h/%2</translation>
    </message>
    <message>
        <source>%1, too few</source>
        <translation>%1, muy pocas</translation>
    </message>
    <message>
        <source>way in %1</source>
        <translation>entrada %1</translation>
    </message>
    <message>
        <source>%1 % curved</source>
        <translation>%1 % curvo</translation>
    </message>
    <message>
        <source>none noted</source>
        <translation>ninguna anotada</translation>
    </message>
    <message>
        <source>What closed jobs say</source>
        <translation>Lo que dicen las obras cerradas</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation>Catálogo</translation>
    </message>
    <message>
        <source>Offered</source>
        <translation>Propuesto</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>Lower quarter</source>
        <translation>Cuarto inferior</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Medio</translation>
    </message>
    <message>
        <source>Upper quarter</source>
        <translation>Cuarto superior</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Mayor</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Obras</translation>
    </message>
    <message>
        <source>Jobs behind the offer</source>
        <translation>Obras detrás de la propuesta</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Came to</source>
        <translation>Resultó</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Condiciones</translation>
    </message>
    <message>
        <source>Take into the catalogue ...</source>
        <translation>Llevar al catálogo ...</translation>
    </message>
    <message>
        <source>Offered from the office&apos;s own closed jobs, never set by itself. Look at the jobs and their conditions first: an offer out of jobs unlike the next one misleads.</source>
        <translation>Propuesto a partir de las obras cerradas de la oficina, nunca puesto por sí solo. Mire antes las obras y sus condiciones: una propuesta de obras distintas de la próxima engaña.</translation>
    </message>
    <message>
        <source>Broken or spoilt</source>
        <translation>Roto o estropeado</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>%1 (left out)</source>
        <translation>%1 (no cuenta)</translation>
    </message>
    <message>
        <source>No closed job has entries of use or hours yet.</source>
        <translation>Ninguna obra cerrada tiene todavía apuntes de uso o de horas.</translation>
    </message>
    <message>
        <source>Choose a row to see its jobs.</source>
        <translation>Elija una fila para ver sus obras.</translation>
    </message>
    <message>
        <source>%1: closed jobs that count: %2. Nothing is offered from fewer than 3.</source>
        <translation>%1: obras cerradas que cuentan: %2. No se propone nada con menos de 3.</translation>
    </message>
    <message>
        <source>%1: the catalogue has %2, the middle of %3 closed jobs is %4. Untick what is unlike the next job.</source>
        <translation>%1: el catálogo tiene %2, el valor medio de %3 obras cerradas es %4. Quite la marca de las que no se parecen a la próxima.</translation>
    </message>
    <message>
        <source>Take into the catalogue</source>
        <translation>Llevar al catálogo</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3 for all new jobs? Jobs that have it already keep theirs; the change can be undone in the catalogue.</source>
        <translation>%1: ¿%2 en lugar de %3 para todas las obras nuevas? Las obras que ya lo tienen conservan el suyo; el cambio se puede deshacer en el catálogo.</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Llevarlo</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>%1 was changed in the catalogue</source>
        <translation>%1 se cambió en el catálogo</translation>
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
        <source>The job is not as its newest version has it</source>
        <translation>El trabajo no está como lo tiene su versión más reciente</translation>
    </message>
    <message>
        <source>save a version, then keep the sheet with it</source>
        <translation>guardar una versión y luego la hoja con ella</translation>
    </message>
    <message>
        <source>Kept with version %1: it shows this sheet from now on</source>
        <translation>Guardado con la versión %1: desde ahora muestra esta hoja</translation>
    </message>
    <message>
        <source>No version of this job is saved yet: save one first</source>
        <translation>Aún no hay ninguna versión guardada de este trabajo: guarde una primero</translation>
    </message>
    <message>
        <source>A change order is made of two saved versions: save one as it was agreed and one as it is wanted</source>
        <translation>Una orden de cambio se hace de dos versiones guardadas: guarde una como se acordó y otra como se desea</translation>
    </message>
</context>
<context>
    <name>ui::OptionsView</name>
    <message>
        <source>Price the options</source>
        <translation>Calcular las opciones</translation>
    </message>
    <message>
        <source>Make what is selected an option</source>
        <translation>Hacer una opción de lo seleccionado</translation>
    </message>
    <message>
        <source>Option to leave it out</source>
        <translation>Opción de omitirlo</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Opciones</translation>
    </message>
    <message>
        <source>Being worked out</source>
        <translation>Se está calculando</translation>
    </message>
    <message>
        <source>What the customer may take beside the base, or in place of a part of it. Each is priced as the difference that it makes, by itself.</source>
        <translation>Lo que el cliente puede tomar además de la base o en lugar de una parte de ella. De cada una se calcula, por sí sola, la diferencia que supone.</translation>
    </message>
    <message>
        <source>Select elements on the plan first</source>
        <translation>Seleccione primero elementos en el plano</translation>
    </message>
    <message>
        <source>The job has changed since: price them again</source>
        <translation>El trabajo ha cambiado: calcúlelas de nuevo</translation>
    </message>
    <message>
        <source>Make an option</source>
        <translation>Hacer una opción</translation>
    </message>
    <message>
        <source>Before tax, with tax, and hours: beside the base</source>
        <translation>Antes de impuesto, con impuesto y horas: respecto a la base</translation>
    </message>
    <message>
        <source>%1, not final</source>
        <translation>%1, no definitivo</translation>
    </message>
    <message>
        <source>Prices of the options</source>
        <translation>Precios de las opciones</translation>
    </message>
</context>
<context>
    <name>ui::OrderResult</name>
    <message>
        <source>unit price of the quote</source>
        <translation>precio unitario de la oferta</translation>
    </message>
    <message>
        <source>as quoted</source>
        <translation>como en la oferta</translation>
    </message>
    <message>
        <source>new line</source>
        <translation>partida nueva</translation>
    </message>
    <message>
        <source>ticket</source>
        <translation>parte</translation>
    </message>
    <message>
        <source>not charged</source>
        <translation>no se cobra</translation>
    </message>
    <message>
        <source>Met on site</source>
        <translation>Hallado en obra</translation>
    </message>
    <message>
        <source>Lines of the change order</source>
        <translation>Partidas de la orden de cambio</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>More, less</source>
        <translation>Más, menos</translation>
    </message>
    <message>
        <source>Priced by</source>
        <translation>Precio según</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>On top</source>
        <translation>Además</translation>
    </message>
    <message>
        <source>The contract changes by %1</source>
        <translation>El contrato cambia en %1</translation>
    </message>
    <message>
        <source>Not final: the contract changes by %1</source>
        <translation>No definitivo: el contrato cambia en %1</translation>
    </message>
    <message>
        <source>%1 as signed, %2 by this order: %3 from now on</source>
        <translation>%1 firmado, %2 por esta orden: %3 desde ahora</translation>
    </message>
    <message>
        <source>%1 as signed, %2 by earlier orders (%3), %4 by this one: %5 from now on</source>
        <translation>%1 firmado, %2 por órdenes anteriores (%3), %4 por esta: %5 desde ahora</translation>
    </message>
    <message>
        <source>Days more by all orders: %1</source>
        <translation>Días de más por todas las órdenes: %1</translation>
    </message>
    <message>
        <source>To be mended: %1</source>
        <translation>Por corregir: %1</translation>
    </message>
    <message>
        <source>To be decided: %1</source>
        <translation>Por decidir: %1</translation>
    </message>
</context>
<context>
    <name>ui::OtherwiseDialog</name>
    <message>
        <source>The same job built otherwise</source>
        <translation>El mismo trabajo hecho de otro modo</translation>
    </message>
    <message>
        <source>Areas that are built otherwise</source>
        <translation>Áreas que se hacen de otro modo</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Aparejo</translation>
    </message>
    <message>
        <source>Build-up</source>
        <translation>Composición</translation>
    </message>
    <message>
        <source>The job stays as it is. What it would come to is shown beside it.</source>
        <translation>El trabajo se queda como está. Al lado se muestra cuánto costaría.</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Areas</source>
        <translation>Áreas</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>como está</translation>
    </message>
    <message>
        <source>%1 (of the book)</source>
        <translation>%1 (del libro)</translation>
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
    <name>ui::PriceListDialog</name>
    <message>
        <source>nothing said</source>
        <translation>nada indicado</translation>
    </message>
    <message>
        <source>by more than half</source>
        <translation>en más de la mitad</translation>
    </message>
    <message>
        <source>older than the catalogue’s</source>
        <translation>más viejo que el del catálogo</translation>
    </message>
    <message>
        <source>supplied by others so far</source>
        <translation>hasta ahora lo suministran otros</translation>
    </message>
    <message>
        <source>the item is retired</source>
        <translation>el artículo está retirado</translation>
    </message>
    <message>
        <source>%1 to a pack in the file</source>
        <translation>%1 por paquete en el archivo</translation>
    </message>
    <message>
        <source>a first price</source>
        <translation>un primer precio</translation>
    </message>
    <message>
        <source>goes up</source>
        <translation>sube</translation>
    </message>
    <message>
        <source>goes down</source>
        <translation>baja</translation>
    </message>
    <message>
        <source>%1; look at it: %2</source>
        <translation>%1; revíselo: %2</translation>
    </message>
    <message>
        <source>the same price on a later day</source>
        <translation>el mismo precio en un día posterior</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>igual</translation>
    </message>
    <message>
        <source>no item has this number</source>
        <translation>ningún artículo tiene este número</translation>
    </message>
    <message>
        <source>several items have this number</source>
        <translation>varios artículos tienen este número</translation>
    </message>
    <message>
        <source>not taken: for a %1 in the file, for a %2 in the catalogue</source>
        <translation>no se toma: por %1 en el archivo, por %2 en el catálogo</translation>
    </message>
    <message>
        <source>the file gives no price</source>
        <translation>el archivo no da precio</translation>
    </message>
    <message>
        <source>not taken</source>
        <translation>no se toma</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Lista de precios</translation>
    </message>
    <message>
        <source>Prices from %1</source>
        <translation>Precios de %1</translation>
    </message>
    <message>
        <source>Tick all that can be taken</source>
        <translation>Marcar todo lo que puede tomarse</translation>
    </message>
    <message>
        <source>Tick none</source>
        <translation>No marcar nada</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>Aplicar</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>%1 prices change, %2 stay the same, %3 are of items that the catalogue does not have, %4 can’t be taken.</source>
        <translation>%1 precios cambian, %2 quedan igual, %3 son de artículos que el catálogo no tiene, %4 no pueden tomarse.</translation>
    </message>
    <message>
        <source>Columns left out: %1.</source>
        <translation>Columnas dejadas fuera: %1.</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Tomar</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Artículo</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>In the file</source>
        <translation>En el archivo</translation>
    </message>
    <message>
        <source>By</source>
        <translation>En</translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation>Qué pasa con él</translation>
    </message>
    <message>
        <source>Rows of the file</source>
        <translation>Filas del archivo</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Línea %1: %2</translation>
    </message>
    <message>
        <source>Take the price of %1</source>
        <translation>Tomar el precio de %1</translation>
    </message>
    <message>
        <source>%1 of %2 that can be taken are ticked</source>
        <translation>%1 de %2 que pueden tomarse están marcados</translation>
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
        <source>This is a demo job. Try:</source>
        <translation>Este es un trabajo de muestra. Pruebe:</translation>
    </message>
    <message>
        <source>Print the crew list</source>
        <translation>Imprimir la lista de la cuadrilla</translation>
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
    <name>ui::SheetsWindow</name>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>Language of the sheet</source>
        <translation>Idioma de la hoja</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Size on the screen</source>
        <translation>Tamaño en pantalla</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Página entera</translation>
    </message>
    <message>
        <source>To read</source>
        <translation>Para leer</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar como PDF…</translation>
    </message>
    <message>
        <source>Keep with the version</source>
        <translation>Guardar con la versión</translation>
    </message>
    <message>
        <source>What is given out is kept with the newest version, as it was printed.</source>
        <translation>Lo que se entrega se guarda con la versión más reciente, tal como se imprimió.</translation>
    </message>
    <message>
        <source>Pages of the sheet</source>
        <translation>Páginas de la hoja</translation>
    </message>
    <message>
        <source>The numbers are still being worked out.</source>
        <translation>Los números aún se están calculando.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Guardado como %1</translation>
    </message>
    <message>
        <source>%1 could not be written: %2</source>
        <translation>No se pudo escribir %1: %2</translation>
    </message>
    <message>
        <source>The price of the quote</source>
        <translation>El precio de la cotización</translation>
    </message>
    <message>
        <source>Price by stage</source>
        <translation>Precio por etapa</translation>
    </message>
    <message>
        <source>Price in one sum</source>
        <translation>Precio en una suma</translation>
    </message>
    <message>
        <source>Price line by line</source>
        <translation>Precio línea por línea</translation>
    </message>
</context>
<context>
    <name>ui::SideBySide</name>
    <message>
        <source>Version %1</source>
        <translation>Versión %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>No version of this job is saved yet: save one, and later changes show against it</source>
        <translation>Todavía no hay ninguna versión guardada de este trabajo: al guardar una, los cambios posteriores se muestran frente a ella</translation>
    </message>
    <message>
        <source>The catalogue of the book can&apos;t be read, so there are no prices of today</source>
        <translation>No se puede leer el catálogo del libro, así que no hay precios de hoy</translation>
    </message>
    <message>
        <source>%1, at today&apos;s prices</source>
        <translation>%1, a precios de hoy</translation>
    </message>
    <message>
        <source>The job has no paved area that could be built otherwise: draw one first</source>
        <translation>El trabajo no tiene un área pavimentada que hacer de otro modo: dibuje una primero</translation>
    </message>
    <message>
        <source>A comparison is still being worked out: ask again in a moment</source>
        <translation>Aún se está calculando una comparación: pida de nuevo en un momento</translation>
    </message>
    <message>
        <source>Being worked out: %1</source>
        <translation>Se está calculando: %1</translation>
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
<context>
    <name>ui::VisitPage</name>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>✓ answered</source>
        <translation>✓ respondido</translation>
    </message>
    <message>
        <source>✓ on the plan</source>
        <translation>✓ en el plano</translation>
    </message>
    <message>
        <source>Points of the site visit</source>
        <translation>Puntos de la visita a la obra</translation>
    </message>
    <message>
        <source>What is looked at</source>
        <translation>Qué se mira</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>Seen on, as 2026-11-28</source>
        <translation>Visto el, como 2026-11-28</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>Visto el</translation>
    </message>
    <message>
        <source>Choose a photo ...</source>
        <translation>Elegir una foto...</translation>
    </message>
    <message>
        <source>Without a photo</source>
        <translation>Sin foto</translation>
    </message>
    <message>
        <source>This is no date: enter it as 2026-11-28</source>
        <translation>Esto no es una fecha: escríbala como 2026-11-28</translation>
    </message>
    <message>
        <source>Choose a photo</source>
        <translation>Elegir una foto</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.webp)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.webp)</translation>
    </message>
    <message>
        <source>Nothing is open</source>
        <translation>No queda nada abierto</translation>
    </message>
    <message>
        <source>%1 of %2 are open: each is an assumption of the quote</source>
        <translation>%1 de %2 están abiertos: cada uno es un supuesto de la oferta</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Precaución: %1</translation>
    </message>
    <message>
        <source>While it is open the quote says: %1</source>
        <translation>Mientras está abierto, la oferta dice: %1</translation>
    </message>
    <message>
        <source>The plan no longer has what this is about; the answer stays.</source>
        <translation>El plano ya no tiene aquello de lo que trata; la respuesta se queda.</translation>
    </message>
    <message>
        <source>Photo: %1</source>
        <translation>Foto: %1</translation>
    </message>
    <message>
        <source>No photo</source>
        <translation>Sin foto</translation>
    </message>
    <message>
        <source>Answer of the site visit</source>
        <translation>Respuesta de la visita a la obra</translation>
    </message>
    <message>
        <source>%1 can&apos;t be read: %2</source>
        <translation>No se puede leer %1: %2</translation>
    </message>
</context>
<context>
    <name>ui::VisitWindow</name>
    <message>
        <source>What is wanted</source>
        <translation>Qué se desea</translation>
    </message>
    <message>
        <source>The enquiry</source>
        <translation>La consulta</translation>
    </message>
    <message>
        <source>Number of the job</source>
        <translation>Número del trabajo</translation>
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
        <source>Asked on, as 2026-11-28</source>
        <translation>Consultado el, como 2026-11-28</translation>
    </message>
    <message>
        <source>Heard of us by</source>
        <translation>Nos conoció por</translation>
    </message>
    <message>
        <source>Budget, as it was said</source>
        <translation>Presupuesto, según lo dicho</translation>
    </message>
    <message>
        <source>The next step</source>
        <translation>El paso siguiente</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>When, as 2026-11-28</source>
        <translation>Cuándo, como 2026-11-28</translation>
    </message>
    <message>
        <source>Enquiry and site visit</source>
        <translation>Consulta y visita a la obra</translation>
    </message>
    <message>
        <source>Enquiry</source>
        <translation>Consulta</translation>
    </message>
    <message>
        <source>Site visit</source>
        <translation>Visita a la obra</translation>
    </message>
</context>
</TS>
